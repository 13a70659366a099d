package hosewright.paper.drawing;

import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Gender;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Where the paper strip meets itself on a new male, and which males those are.
 *
 * @param label the ends, without the word male
 * @param circumferenceIn once round the crests, inches: pi times the major diameter
 * @param lane the row it stands in, 0 for the uppermost
 */
record StripMark(String label, double circumferenceIn, int lane) {

  /** Families that share a row, because their marks never come close. */
  private static final List<List<String>> NATIONAL_LANES =
      List.of(List.of("NH", "GHT"), List.of("NPSH"), List.of("NPT"), List.of("G", "R"));

  /** Smallest room for a label, inches along the strip. */
  private static final double ROOM_IN = 0.62;

  /** Threads of national and international standards, a row for each kind. */
  static List<StripMark> national() {
    List<StripMark> marks = new ArrayList<>();
    for (int lane = 0; lane < NATIONAL_LANES.size(); lane++) {
      List<String> families = NATIONAL_LANES.get(lane);
      for (List<ThreadDimensions> alike : alike(family -> families.contains(family.code()))) {
        marks.add(new StripMark(label(alike), circumferenceIn(alike), lane));
      }
    }
    return marks;
  }

  /** Regional fire threads, each in the first row that has room. */
  static List<StripMark> regional() {
    List<StripMark> marks = new ArrayList<>();
    List<Double> taken = new ArrayList<>();
    for (List<ThreadDimensions> alike : alike(Family::regional)) {
      double at = circumferenceIn(alike);
      int lane = 0;
      while (lane < taken.size() && taken.get(lane) > at) {
        lane++;
      }
      if (lane == taken.size()) {
        taken.add(0.0);
      }
      taken.set(lane, at + ROOM_IN);
      marks.add(new StripMark(label(alike), at, lane));
    }
    return marks;
  }

  static int lanes(List<StripMark> marks) {
    return marks.stream().mapToInt(StripMark::lane).max().orElse(0) + 1;
  }

  /** Males of the same diameter together, smallest first. */
  private static List<List<ThreadDimensions>> alike(Predicate<Family> wanted) {
    Map<Double, List<ThreadDimensions>> byDiameter =
        ThreadTable.all().stream()
            .filter(row -> row.majorMaxIn().isPresent())
            .filter(row -> wanted.test(family(row)))
            .filter(row -> family(row).halves().genders().contains(Gender.MALE))
            .sorted(Comparator.comparingDouble(row -> row.majorMaxIn().getAsDouble()))
            .collect(
                Collectors.groupingBy(
                    row -> row.majorMaxIn().getAsDouble(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return List.copyOf(byDiameter.values());
  }

  private static Family family(ThreadDimensions row) {
    return Families.find(row.family()).orElseThrow();
  }

  private static double circumferenceIn(List<ThreadDimensions> alike) {
    return Math.PI * alike.get(0).majorMaxIn().getAsDouble();
  }

  private static String label(List<ThreadDimensions> alike) {
    return distinct(alike, row -> EndRuler.plain(row.sizeIn()))
        + " "
        + distinct(alike, ThreadDimensions::family);
  }

  private static String distinct(
      List<ThreadDimensions> rows, Function<ThreadDimensions, String> part) {
    return rows.stream().map(part).distinct().collect(Collectors.joining("/"));
  }
}
