package hosewright.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what a user probably meant. */
public final class Nearest {
  /** Longer texts are no slips of a hand, and comparing them takes long. */
  private static final int LONGEST = 500;

  private Nearest() {}

  /**
   * The candidate closest to what was typed, ignoring case.
   *
   * @return empty when nothing is close: more than half of the typed letters would have to change
   */
  public static String to(String typed, Collection<String> candidates) {
    if (typed.length() > LONGEST) {
      return "";
    }
    String wanted = typed.toLowerCase(Locale.ROOT);
    int limit = Math.max(1, wanted.length() / 2);
    LevenshteinDistance distance = new LevenshteinDistance(limit);
    return candidates.stream()
        .filter(c -> distance.apply(wanted, c.toLowerCase(Locale.ROOT)) >= 0)
        .min(
            Comparator.<String>comparingInt(c -> distance.apply(wanted, c.toLowerCase(Locale.ROOT)))
                // Of as many changed letters, two that changed places are the likelier slip.
                .thenComparing(
                    c -> -new JaroWinklerSimilarity().apply(wanted, c.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .orElse("");
  }

  /**
   * The candidate that a slip of the hand or a beginning may mean, stricter than {@link #to}: for
   * words among which a wrong guess misleads, such as options.
   *
   * @return empty when nothing is close
   */
  public static String closely(String typed, Collection<String> candidates) {
    List<String> close =
        candidates.stream().filter(one -> isClose(letters(typed), letters(one))).toList();
    return to(typed, close);
  }

  private static boolean isClose(String typed, String candidate) {
    if (typed.length() > LONGEST) {
      return false;
    }
    int changed = new LevenshteinDistance().apply(typed, candidate);
    boolean begun = typed.length() >= 3 && candidate.startsWith(typed);
    boolean swapped = changed == 2 && sorted(typed).equals(sorted(candidate));
    return begun || swapped || changed <= Math.max(1, typed.length() / 4);
  }

  private static String letters(String text) {
    return text.toLowerCase(Locale.ROOT).replaceFirst("^--", "");
  }

  private static String sorted(String text) {
    return text.chars().sorted().mapToObj(Character::toString).collect(Collectors.joining());
  }
}
