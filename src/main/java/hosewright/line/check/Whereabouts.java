package hosewright.line.check;

import static hosewright.line.check.Checks.text;

import hosewright.line.model.Hydraulics.Station;

/** Where along a line something is, in words. */
final class Whereabouts {
  private static final double LEVEL_FT = 0.5;

  private Whereabouts() {}

  /** How much hose lies before a station, and how high it stands. */
  static String of(Station at) {
    return text("after %.0f ft of hose, %s", at.distanceFt(), height(at.elevationFt()));
  }

  private static String height(double overSourceFt) {
    if (Math.abs(overSourceFt) < LEVEL_FT) {
      return "level with the source";
    }
    return text(
        "%.0f ft %s the source", Math.abs(overSourceFt), overSourceFt > 0 ? "above" : "below");
  }
}
