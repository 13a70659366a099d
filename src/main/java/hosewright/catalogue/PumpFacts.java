package hosewright.catalogue;

import java.util.List;

/**
 * What a pump that is sold does.
 *
 * @param curve what it adds to its intake, from shut-off on
 * @param fuel what drives it; empty where that is not stated
 */
public record PumpFacts(List<Point> curve, String fuel) {
  public PumpFacts {
    curve = List.copyOf(curve);
  }

  /** A point of its curve. */
  public record Point(double flowGpm, double psi) {}
}
