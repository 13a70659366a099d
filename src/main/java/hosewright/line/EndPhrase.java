package hosewright.line;

import hosewright.problem.BadInputException;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads an end with a word of what carries it, as people say it at the counter: "2.5 NH male
 * hydrant", "1.5 NH nozzle".
 */
final class EndPhrase {
  private EndPhrase() {}

  /** An end and what carries it. */
  record Phrase<K>(End end, K kind) {}

  /** A source; outlets are male unless said otherwise. */
  static Phrase<SourceKind> source(String text) {
    List<String> words = words(text);
    SourceKind kind = take(words, SourceKind.values(), SourceKind.OUTLET);
    words.removeAll(List.of("discharge", "stub", "outlet"));
    return new Phrase<>(end(text, words, kind != SourceKind.OUTLET, "male"), kind);
  }

  /** An appliance; inlets are female unless said otherwise. */
  static Phrase<ApplianceKind> appliance(String text) {
    List<String> words = words(text);
    ApplianceKind kind = take(words, ApplianceKind.values(), ApplianceKind.APPLIANCE);
    words.removeAll(List.of("inlet", "fill"));
    return new Phrase<>(end(text, words, kind != ApplianceKind.APPLIANCE, "female"), kind);
  }

  private static List<String> words(String text) {
    return new ArrayList<>(Arrays.asList(text.strip().split("\\s+")));
  }

  private static <K extends Enum<K>> K take(List<String> words, K[] kinds, K otherwise) {
    for (K kind : kinds) {
      if (words.removeIf(word -> word.toLowerCase(Locale.ROOT).equals(name(kind)))) {
        return kind;
      }
    }
    return otherwise;
  }

  private static String name(Enum<?> kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /** With the carrier named, the usual gender may go unsaid; otherwise it must be said. */
  private static End end(String text, List<String> words, boolean usual, String usualGender) {
    String rest = String.join(" ", words);
    try {
      return End.parse(rest);
    } catch (BadInputException e) {
      if (usual) {
        try {
          return End.parse(rest + " " + usualGender);
        } catch (BadInputException stillBad) {
          throw e;
        }
      }
      throw e;
    }
  }
}
