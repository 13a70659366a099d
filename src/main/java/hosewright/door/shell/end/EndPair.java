package hosewright.door.shell.end;

import hosewright.problem.BadInputException;
import hosewright.thread.End;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Two ends typed one behind the other, with a small word between: {@code A on B}. */
final class EndPair {
  private EndPair() {}

  /**
   * The words as two options.
   *
   * @param between words that may stand between the two
   */
  static List<String> asOptions(
      List<String> words, List<String> between, String first, String second) {
    List<Integer> places =
        IntStream.range(1, words.size() - 1)
            .filter(at -> between.contains(words.get(at).toLowerCase(Locale.ROOT)))
            .boxed()
            .toList();
    if (places.isEmpty()) {
      throw new BadInputException(
          "ends",
          String.join(" ", words),
          "two ends with '"
              + between.get(0)
              + "' between them: 1.5 NPSH male "
              + between.get(0)
              + " 1.5 NPT female");
    }
    int place = places.stream().filter(at -> areEnds(words, at)).findFirst().orElse(places.get(0));
    return List.of(
        "--" + first,
        joined(words, 0, place),
        "--" + second,
        joined(words, place + 1, words.size()));
  }

  private static boolean areEnds(List<String> words, int place) {
    return isEnd(joined(words, 0, place)) && isEnd(joined(words, place + 1, words.size()));
  }

  private static boolean isEnd(String text) {
    try {
      End.parse(text);
      return true;
    } catch (BadInputException e) {
      return false;
    }
  }

  private static String joined(List<String> words, int from, int to) {
    return String.join(" ", words.subList(from, to));
  }
}
