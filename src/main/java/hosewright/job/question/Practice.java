package hosewright.job.question;

import hosewright.csv.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * A rule of the trade that no law of water makes, a row of {@code practice.csv}.
 *
 * @param id what a buyer lifts it by, and the word of the check that holds it
 * @param about what it speaks against, in words that follow "no"
 * @param limit the figure it rests on; empty where it has none
 * @param unit of the limit
 * @param lifting whether a buyer may ask for a plan that leaves it aside
 */
public record Practice(
    String id,
    String about,
    OptionalDouble limit,
    String unit,
    Effect effect,
    Lifting lifting,
    String source) {
  private static final Map<String, Practice> ALL =
      ReferenceTable.rows("line/practice.csv", Practice::of).stream()
          .collect(Collectors.toUnmodifiableMap(Practice::id, Function.identity()));

  /** What becomes of a line that a rule speaks against. */
  public enum Effect {
    /** It is no plan. */
    FORBIDS,
    /** It is a plan only where there is no other. */
    RANKS_LAST,
    /** It is a plan, and its papers say so. */
    WARNS
  }

  /** Whether a rule may be left aside. */
  public enum Lifting {
    NO("no"),
    /** By whoever names it; and where nothing else does, that is said. */
    YES("yes"),
    /** By whoever names it, and nobody is told that it would help. */
    UNADVISED("yes, never advised");

    private final String word;

    Lifting(String word) {
      this.word = word;
    }

    private static Lifting of(String word) {
      return Arrays.stream(values())
          .filter(lifting -> lifting.word.equals(word))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no way of lifting a rule: " + word));
    }
  }

  /** Whether a buyer may ask for a plan that leaves it aside. */
  public boolean liftable() {
    return lifting != Lifting.NO;
  }

  public static List<Practice> all() {
    return ALL.values().stream().sorted((one, other) -> one.id.compareTo(other.id)).toList();
  }

  /** The rule with an id, for what alone holds it. */
  public static Practice named(String id) {
    return Objects.requireNonNull(ALL.get(id), id);
  }

  /** The rule with an id, if it is one. */
  public static Optional<Practice> find(String id) {
    return Optional.ofNullable(ALL.get(id));
  }

  /** The ids of the rules that may be lifted, by name. */
  public static List<String> liftableIds() {
    return all().stream().filter(Practice::liftable).map(Practice::id).toList();
  }

  private static Practice of(CSVRecord row) {
    return new Practice(
        row.get("id"),
        row.get("about"),
        ReferenceTable.number(row, "limit"),
        row.get("unit"),
        Effect.valueOf(row.get("effect").replace(' ', '_').toUpperCase(Locale.ROOT)),
        Lifting.of(row.get("liftable")),
        row.get("source"));
  }
}
