package hosewright.paper.drawing;

import hosewright.paper.page.Lettering;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import hosewright.thread.Families;
import hosewright.thread.Gender;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A comb whose teeth stand as far apart as a thread's crests, in true size. */
final class CombPicture {
  private static final double POINTS_PER_INCH = StripPicture.POINTS_PER_INCH;
  private static final double LONGEST_IN = 1.6;
  private static final double LEFT = 4;
  private static final double BACK = 6;
  private static final double DEEPEST = 14;
  private static final double LETTER_SIZE = 6.5;

  private CombPicture() {}

  /** Every count of threads per inch, with the males that have it, coarse first. */
  static Map<Double, List<ThreadDimensions>> counts() {
    return ThreadTable.all().stream()
        .filter(row -> row.threadsPerInch().isPresent())
        .filter(
            row ->
                Families.find(row.family()).orElseThrow().halves().genders().contains(Gender.MALE))
        .collect(
            Collectors.groupingBy(
                row -> row.threadsPerInch().getAsDouble(), TreeMap::new, Collectors.toList()));
  }

  /**
   * One comb with what it fits beside it.
   *
   * @param width points across the sheet
   */
  static Picture of(double threadsPerInch, List<ThreadDimensions> threads, double width) {
    double pitch = POINTS_PER_INCH / threadsPerInch;
    int teeth = (int) Math.floor(LONGEST_IN * threadsPerInch);
    double depth = Math.min(DEEPEST, 0.65 * pitch);
    List<Double> corners = new ArrayList<>(List.of(LEFT, 0.0));
    for (int tooth = 0; tooth < teeth; tooth++) {
      corners.addAll(List.of(LEFT + tooth * pitch, BACK));
      corners.addAll(List.of(LEFT + (tooth + 0.5) * pitch, BACK + depth));
    }
    corners.addAll(List.of(LEFT + teeth * pitch, BACK));
    corners.addAll(List.of(LEFT + teeth * pitch, 0.0));
    List<Mark> drawn = new ArrayList<>(List.of(new Outline(corners, 0.4, 0.85)));
    double x = LEFT + LONGEST_IN * POINTS_PER_INCH + 12;
    drawn.add(new Words(x, 8, 8, Anchor.START, EndRuler.plain(threadsPerInch) + " in one inch"));
    double y = 8;
    for (String line : Lettering.sans().wrap(fits(threads), LETTER_SIZE, width - x - 72)) {
      drawn.add(new Words(x + 70, y, LETTER_SIZE, Anchor.START, line));
      y += LETTER_SIZE * 1.2;
    }
    return new Picture(width, Math.max(24, y + 2), drawn);
  }

  private static String fits(List<ThreadDimensions> threads) {
    return threads.stream()
        .collect(
            Collectors.groupingBy(
                ThreadDimensions::family,
                LinkedHashMap::new,
                Collectors.mapping(row -> EndRuler.plain(row.sizeIn()), Collectors.joining(" "))))
        .entrySet()
        .stream()
        .map(family -> family.getKey() + " " + family.getValue())
        .collect(Collectors.joining(", "));
  }
}
