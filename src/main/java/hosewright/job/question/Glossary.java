package hosewright.job.question;

import hosewright.csv.ReferenceTable;
import hosewright.problem.Nearest;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The trade's words in plain ones, from {@code words.csv}, and what each family is. */
public final class Glossary {
  private static final List<Entry> ENTRIES =
      ReferenceTable.rows(
          "words.csv", row -> new Entry(row.get("word"), row.get("meaning"), row.get("source")));

  private Glossary() {}

  /** A word with its meaning in one or two sentences. */
  record Entry(String word, String meaning, String source) {}

  /** What a word means in a sentence or two; empty where it is not explained here. */
  public static Optional<String> meaning(String word) {
    return ENTRIES.stream()
        .filter(entry -> entry.word().equalsIgnoreCase(word.strip()))
        .map(entry -> withUsual(entry.meaning()))
        .findFirst();
  }

  /** What a word means, or the nearest word there is an explanation of. */
  public static String explain(String word) {
    String wanted = word.strip().toLowerCase(Locale.ROOT);
    Optional<Entry> entry =
        ENTRIES.stream().filter(e -> e.word().equalsIgnoreCase(wanted)).findFirst();
    if (entry.isPresent()) {
      return entry.get().word() + ": " + withUsual(entry.get().meaning());
    }
    return Families.find(wanted).map(Glossary::family).orElseGet(() -> unknown(wanted));
  }

  /** A job's word in braces stands for the answer that is usual. */
  private static String withUsual(String meaning) {
    String said = meaning;
    for (JobField field : JobField.values()) {
      said = said.replace("{" + field.word() + "}", field.whenOpen().usual().orElse(""));
    }
    return said;
  }

  private static String family(Family family) {
    return "%s: %s, %s; seals on %s. 'end show' draws one."
        .formatted(family.code(), family.name(), family.kind().word(), family.sealing().seal());
  }

  private static String unknown(String word) {
    List<String> words =
        Stream.concat(ENTRIES.stream().map(Entry::word), Families.all().stream().map(Family::code))
            .toList();
    String nearest = Nearest.to(word, words);
    return nearest.isEmpty()
        ? "'" + word + "' is not explained here. Explained are: " + String.join(", ", words)
        : "'" + word + "' is not explained here; '" + nearest + "' is: ? " + nearest;
  }
}
