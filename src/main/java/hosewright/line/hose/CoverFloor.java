package hosewright.line.hose;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The least that the sections of a lay add up to, in money or weight, when some of them are chosen:
 * as if the rest could be cut to length from what takes least a foot.
 */
final class CoverFloor {
  /** Far more than rounding may leave uncovered, far less than any section. */
  private static final double HAIR_FT = 1e-6;

  private final Cover cover;
  private final double[] each;
  private final List<List<Integer>> leastPerFtFirst;

  /**
   * @param each the least of one section of each option
   */
  CoverFloor(Cover cover, double[] each) {
    this.cover = cover;
    this.each = each;
    this.leastPerFtFirst =
        IntStream.rangeClosed(0, each.length)
            .mapToObj(
                from ->
                    IntStream.range(from, each.length)
                        .boxed()
                        .sorted(Comparator.comparingDouble(this::perFt))
                        .toList())
            .toList();
  }

  private double perFt(int option) {
    return each[option] / cover.lengthsFt().get(option);
  }

  /** Of any lay. */
  double ofAll() {
    return ofRest(0, cover.neededFt());
  }

  /**
   * Of any lay that begins with some sections; infinite where nothing covers the rest.
   *
   * @param counts sections of each option; those up to {@code option} are chosen
   * @param coveredFt what they cover, ft
   */
  double ofBegun(int[] counts, int option, double coveredFt) {
    double sum = 0;
    for (int i = 0; i <= option; i++) {
      sum += counts[i] * each[i];
    }
    return sum + ofRest(option + 1, cover.neededFt() - coveredFt);
  }

  private double ofRest(int from, double restFt) {
    double sum = 0;
    double leftFt = restFt;
    for (int option : leastPerFtFirst.get(from)) {
      if (leftFt <= HAIR_FT) {
        return sum;
      }
      double thereFt = cover.most().get(option) * cover.lengthsFt().get(option);
      double takenFt = Math.min(leftFt, thereFt);
      sum += takenFt * perFt(option);
      leftFt -= takenFt;
    }
    return leftFt <= HAIR_FT ? sum : Double.POSITIVE_INFINITY;
  }
}
