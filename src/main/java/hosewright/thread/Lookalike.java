package hosewright.thread;

import java.util.ArrayList;
import java.util.List;

/**
 * Two males with the same threads per inch whose diameters no hand-held caliper tells apart.
 *
 * @param a one of them
 * @param b the other
 * @param gapIn how far their major diameters lie apart, inches
 */
public record Lookalike(End a, End b, double gapIn) {

  /** Three standard deviations of a caliper reading. */
  static final double TOO_CLOSE_IN = 3 * Measurement.CALIPER_ERROR_IN;

  /** Every such pair in the tables. */
  public static List<Lookalike> all() {
    List<ThreadDimensions> males =
        ThreadTable.all().stream()
            .filter(r -> r.majorMaxIn().isPresent() && r.threadsPerInch().isPresent())
            .filter(r -> new End(r.sizeIn(), r.family(), Gender.MALE, false).listed())
            .toList();
    List<Lookalike> pairs = new ArrayList<>();
    for (ThreadDimensions a : males) {
      for (ThreadDimensions b : males.subList(males.indexOf(a) + 1, males.size())) {
        double gap = Math.abs(a.majorMaxIn().orElseThrow() - b.majorMaxIn().orElseThrow());
        if (a.threadsPerInch().equals(b.threadsPerInch()) && gap <= TOO_CLOSE_IN) {
          pairs.add(new Lookalike(male(a), male(b), gap));
        }
      }
    }
    return pairs;
  }

  private static End male(ThreadDimensions row) {
    return new End(row.sizeIn(), row.family(), Gender.MALE, false);
  }
}
