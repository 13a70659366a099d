package hosewright.fleet.record;

import hosewright.csv.PlainNumber;
import hosewright.thread.End;

/**
 * Sections that replace one another: the same size, length as bought, couplings and jacket.
 *
 * @param sizeIn nominal hose size, in
 * @param lengthFt length as bought, ft
 */
public record HoseKind(double sizeIn, double lengthFt, End endA, End endB, String jacket) {

  /** For example "1.75 in x 50 ft, 1.5 NH female swivel x 1.5 NH male, double". */
  @Override
  public String toString() {
    return "%s in x %s ft, %s x %s%s"
        .formatted(
            PlainNumber.of(sizeIn),
            PlainNumber.of(lengthFt),
            endA,
            endB,
            jacket.isEmpty() ? "" : ", " + jacket);
  }
}
