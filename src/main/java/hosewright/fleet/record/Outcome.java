package hosewright.fleet.record;

import hosewright.csv.ReferenceTable;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * What a service record found or did; the list is data, {@code fleet/outcomes.csv}.
 *
 * @param code the word that stands in files, for example {@code coupling-slip}
 * @param effect what it does to the section
 * @param rule code of the rule that takes the section out of service, or keeps it out until it
 *     passes; empty where none does
 * @param meaning in words
 */
public record Outcome(String code, Effect effect, String rule, String meaning) {

  /** What a record does to its section. */
  public enum Effect {
    PASS,
    REPAIR,
    REMOVE,
    RETIRE
  }

  private static final Map<String, Outcome> ALL = load();

  /** Every outcome by its word. */
  public static Map<String, Outcome> byWord() {
    return ALL;
  }

  /**
   * The outcome of that word.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Outcome of(String word) {
    Outcome found = ALL.get(word);
    if (found == null) {
      throw new IllegalArgumentException("no outcome " + word);
    }
    return found;
  }

  /** Whether it takes the section out of service. */
  public boolean takesOut() {
    return effect == Effect.REMOVE || effect == Effect.RETIRE;
  }

  /** Whether it is a service test or inspection that the hose did not stand. */
  public boolean failed() {
    return takesOut() && RetirementRule.of(rule).failure();
  }

  /** Whether a test under pressure was made. */
  public boolean tested() {
    return effect == Effect.PASS || failed();
  }

  private static Map<String, Outcome> load() {
    Map<String, Outcome> all = new LinkedHashMap<>();
    ReferenceTable.rows(
            "fleet/outcomes.csv",
            row ->
                new Outcome(
                    row.get("code"),
                    Effect.valueOf(row.get("effect").toUpperCase(Locale.ROOT)),
                    row.get("rule"),
                    row.get("meaning")))
        .forEach(outcome -> all.put(outcome.code(), outcome));
    return all;
  }
}
