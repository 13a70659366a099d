package hosewright.job.question;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads an end with a word of what carries it, as people say it at the counter: "2.5 NH male
 * hydrant", "1.5 NH nozzle".
 */
public final class EndPhrase {
  private static final List<String> OUTLETS = List.of("discharge", "stub", "outlet", "from");

  /** "To pump", people say of the end that goes to it. */
  private static final List<String> INLETS = List.of("inlet", "intake", "fill", "to", "into");

  private EndPhrase() {}

  /** An end and what carries it. */
  public record Phrase<K>(End end, K kind) {}

  /** A source; outlets are male unless said otherwise. */
  static Phrase<SourceKind> source(String text) {
    List<String> words = words(text);
    SourceKind kind = take(words, SourceKind.values(), SourceKind.OUTLET);
    if (kind == SourceKind.OUTLET && words.removeIf("tap"::equalsIgnoreCase)) {
      kind = SourceKind.PIPE;
    }
    words.removeIf(word -> OUTLETS.contains(word.toLowerCase(Locale.ROOT)));
    return new Phrase<>(
        end(text, words, kind != SourceKind.OUTLET ? "male" : "", SourceKind.values()), kind);
  }

  /** An appliance; inlets are female unless said otherwise. */
  static Phrase<ApplianceKind> appliance(String text) {
    List<String> words = words(text);
    ApplianceKind kind = take(words, ApplianceKind.values(), ApplianceKind.APPLIANCE);
    boolean fed = kind == ApplianceKind.APPLIANCE && words.removeIf(EndPhrase::isFed);
    words.removeIf(word -> INLETS.contains(word.toLowerCase(Locale.ROOT)));
    return new Phrase<>(
        end(
            text,
            words,
            kind != ApplianceKind.APPLIANCE || fed ? "female" : "",
            ApplianceKind.values()),
        kind);
  }

  /** What a line feeds that feeds other lines in turn; it is an appliance like any other. */
  private static boolean isFed(String word) {
    return List.of("pump", "siamese", "wye", "manifold").contains(word.toLowerCase(Locale.ROOT));
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

  /**
   * With the carrier named, the usual gender may go unsaid; otherwise it must be said.
   *
   * @param usualGender empty when no carrier is named
   */
  private static End end(String text, List<String> words, String usualGender, Enum<?>... carriers) {
    String rest = String.join(" ", words);
    try {
      return End.parse(rest);
    } catch (BadInputException e) {
      if (usualGender.isEmpty()) {
        throw misspelt(text, words, carriers).orElse(e);
      }
      return parsed(rest + " " + usualGender).orElseThrow(() -> e);
    }
  }

  /** One word is close to a carrier's, and all the rest is an end. */
  private static Optional<BadInputException> misspelt(
      String text, List<String> words, Enum<?>... carriers) {
    List<String> names = Arrays.stream(carriers).map(EndPhrase::name).toList();
    for (String word : words) {
      String meant = word.length() < 4 ? "" : Nearest.to(word, names);
      List<String> rest = words.stream().filter(other -> !other.equals(word)).toList();
      String end = String.join(" ", rest);
      if (!meant.isEmpty() && (parsed(end).isPresent() || parsed(end + " male").isPresent())) {
        return Optional.of(
            new BadInputException(
                List.of(
                    new Problem(
                        "end",
                        text,
                        "'%s' is not understood: what carries it is one of %s"
                            .formatted(word, String.join(", ", names)),
                        end + " " + meant))));
      }
    }
    return Optional.empty();
  }

  private static Optional<End> parsed(String text) {
    try {
      return Optional.of(End.parse(text));
    } catch (BadInputException e) {
      return Optional.empty();
    }
  }
}
