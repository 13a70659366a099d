package hosewright.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
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
}
