package hosewright.fleet.record;

import hosewright.csv.ReferenceTable;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/**
 * Why a section leaves service; the rules are data, {@code fleet/retirement-rules.csv}.
 *
 * @param code its name in records and answers
 * @param firing when it fires
 * @param failure whether hose that leaves by it has worn out; else it is a life cut off at that age
 * @param force whether a standard asks for it, the agency does, or somebody declared it
 * @param sentence the rule in one sentence
 * @param source where the rule stands
 */
public record RetirementRule(
    String code, Firing firing, boolean failure, Force force, String sentence, String source) {

  /**
   * When a rule fires.
   *
   * @param trigger what fires it
   * @param before the day before which hose must not be made, for {@link Trigger#MADE_BEFORE}
   * @param needsLimit whether it fires only where the agency has set its limit
   */
  public record Firing(Trigger trigger, Optional<LocalDate> before, boolean needsLimit) {}

  /** What fires a rule. */
  public enum Trigger {
    MADE_BEFORE,
    RECORD,
    AGE,
    REPAIRS,
    STREAK,
    INVENTORY
  }

  /** Who asks for it. */
  public enum Force {
    STANDARD,
    AGENCY,
    DECLARED
  }

  /** What the rules are called that no outcome of a record names, and that of mended hose. */
  public static final String MADE_BEFORE = "made-before-1987";

  public static final String AGE_LIMIT = "age-limit";
  public static final String REPAIRS = "repairs";
  public static final String STREAK = "failure-streak";
  public static final String MENDED = "mended";
  public static final String BEFORE_REGISTER = "before-register";

  private static final Map<String, RetirementRule> ALL = load();

  /**
   * The rule of that code.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static RetirementRule of(String code) {
    RetirementRule found = ALL.get(code);
    if (found == null) {
      throw new IllegalArgumentException("no retirement rule " + code);
    }
    return found;
  }

  private static Map<String, RetirementRule> load() {
    Map<String, RetirementRule> all = new LinkedHashMap<>();
    ReferenceTable.rows("fleet/retirement-rules.csv", RetirementRule::row)
        .forEach(rule -> all.put(rule.code(), rule));
    return all;
  }

  private static RetirementRule row(CSVRecord row) {
    String before = row.get("before");
    return new RetirementRule(
        row.get("code"),
        new Firing(
            Trigger.valueOf(constant(row.get("trigger"))),
            before.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(before)),
            row.get("needs_limit").equals("yes")),
        row.get("counts_as").equals("failure"),
        Force.valueOf(constant(row.get("force"))),
        row.get("sentence"),
        row.get("source"));
  }

  private static String constant(String word) {
    return word.toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
