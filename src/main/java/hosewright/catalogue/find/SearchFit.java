package hosewright.catalogue.find;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** How well one thing asked for fits one thing written: 0 not at all, 1 exactly. */
final class SearchFit {
  static final double MENTIONED = 0.5;

  private static final double BEGUN = 0.8;
  private static final double MISSPELT = 0.6;
  private static final double SIZE_OF_AN_END = 0.8;
  private static final double SAME_HALF = 0.9;
  private static final double SHORTEST_BEGINNING = 3;

  /** Somebody who types a whole item number wants that item before all others. */
  private static final double THE_NUMBER = 5;

  private SearchFit() {}

  /**
   * An end among an item's: a swivel where a rigid end was asked for, or the reverse, fits less.
   *
   * @param rank 0 for the end that fits best, 1 for the next: an end asked for twice must be there
   *     twice
   */
  static double end(List<End> ends, End wanted, int rank) {
    return ends.stream()
        .map(end -> end(end, wanted))
        .sorted(Comparator.reverseOrder())
        .skip(rank)
        .findFirst()
        .orElse(0.0);
  }

  private static double end(End end, End wanted) {
    if (end.equals(wanted)) {
      return 1;
    }
    boolean half =
        end.sizeIn() == wanted.sizeIn()
            && end.family().equals(wanted.family())
            && end.gender() == wanted.gender();
    return half ? SAME_HALF : 0;
  }

  /** A number as a hose's size or length, or the size of an end. */
  static double size(Listing listing, double number, String unit) {
    if (!unit.equals("ft") && is(listing.hoseSizeIn(), number)) {
      return 1;
    }
    if (!unit.equals("in") && is(listing.lengthFt(), number)) {
      return 1;
    }
    boolean ofAnEnd =
        !unit.equals("ft") && listing.ends().stream().anyMatch(end -> end.sizeIn() == number);
    return ofAnEnd ? SIZE_OF_AN_END : 0;
  }

  /** A piece of an item number. */
  static double number(String number, String piece) {
    if (number.equals(piece)) {
      return THE_NUMBER;
    }
    return number.startsWith(piece) ? 1 : number.contains(piece) ? BEGUN : 0;
  }

  /** The words that are what was typed, or go on from it. */
  static Map<String, Double> words(String typed, Set<String> vocabulary) {
    Map<String, Double> found = new LinkedHashMap<>();
    if (vocabulary.contains(typed)) {
      found.put(typed, 1.0);
    }
    if (typed.length() >= SHORTEST_BEGINNING) {
      for (String word : vocabulary) {
        if (word.length() > typed.length() && word.startsWith(typed)) {
          found.put(word, BEGUN);
        }
      }
      String singular = typed.endsWith("s") ? typed.substring(0, typed.length() - 1) : typed;
      if (vocabulary.contains(singular)) {
        found.putIfAbsent(singular, BEGUN);
      }
    }
    return found;
  }

  /** The words nearest to a misspelt one, all of those that are equally near. */
  static Map<String, Double> misspelt(String typed, Set<String> vocabulary) {
    int limit = typed.length() < 4 ? 0 : typed.length() < 6 ? 1 : 2;
    LevenshteinDistance distance = new LevenshteinDistance(limit);
    int nearest = limit + 1;
    List<String> found = new ArrayList<>();
    for (String word : vocabulary) {
      int far = Math.abs(word.length() - typed.length()) > limit ? -1 : distance.apply(typed, word);
      if (far >= 0 && far < nearest) {
        nearest = far;
        found.clear();
      }
      if (far == nearest && far <= limit) {
        found.add(word);
      }
    }
    Map<String, Double> weights = new LinkedHashMap<>();
    found.stream().sorted().forEach(word -> weights.put(word, MISSPELT));
    return weights;
  }

  private static boolean is(OptionalDouble fact, double number) {
    return fact.isPresent() && fact.getAsDouble() == number;
  }
}
