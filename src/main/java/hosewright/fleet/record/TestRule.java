package hosewright.fleet.record;

import hosewright.csv.ReferenceTable;
import java.util.List;
import java.util.Optional;

/**
 * A published figure about service tests; the list is data, {@code fleet/test-rules.csv}.
 *
 * @param edition edition of the standard, a year, or {@code any}
 * @param quantity interval, hold, pressure or advised-life
 * @param hose attack, supply, forestry or any
 * @param value the figure, in {@code unit}
 * @param source where it was published
 */
public record TestRule(
    String edition, String quantity, String hose, double value, String unit, String source) {

  /** The edition taken where the agency names none. */
  public static final String USUAL_EDITION = "2018";

  private static final List<TestRule> ALL =
      ReferenceTable.rows(
          "fleet/test-rules.csv",
          row ->
              new TestRule(
                  row.get("edition"),
                  row.get("quantity"),
                  row.get("hose"),
                  Double.parseDouble(row.get("value")),
                  row.get("unit"),
                  row.get("source")));

  /** Editions whose hold time is known. */
  public static List<String> editions() {
    return ALL.stream()
        .filter(rule -> rule.quantity().equals("hold"))
        .map(TestRule::edition)
        .toList();
  }

  /** The figure of an edition, or the one that holds for any. */
  public static Optional<TestRule> find(String edition, String quantity) {
    return ALL.stream()
        .filter(rule -> rule.quantity().equals(quantity))
        .filter(rule -> rule.edition().equals(edition) || rule.edition().equals("any"))
        .findFirst();
  }

  /** How long a test is good for, years. */
  static int intervalYears() {
    return (int) find("any", "interval").orElseThrow().value();
  }

  /** The age that is often advised, years: advice and no rule. */
  public static TestRule advisedLife() {
    return find("any", "advised-life").orElseThrow();
  }
}
