package hosewright.job;

import hosewright.hydraulics.Ground;
import hosewright.job.question.Route;
import java.util.Optional;

/**
 * How far it is, and how high the ground lies.
 *
 * @param lengthFt distance along the ground, ft; to the wye where lines stand behind one
 * @param riseFt height of the appliance above the source, ft; negative downhill
 * @param route the way from source to appliance place by place; empty where only the ends are known
 */
public record Way(double lengthFt, double riseFt, Optional<Route> route) {

  /** A way of which only the ends are known. */
  static Way between(double lengthFt, double riseFt) {
    return new Way(lengthFt, riseFt, Optional.empty());
  }

  /**
   * A way that was surveyed.
   *
   * @param behindFt how much of it lies behind the wye, ft
   */
  static Way along(Route route, double behindFt) {
    return new Way(route.lengthFt() - behindFt, route.ground().riseFt(), Optional.of(route));
  }

  /** Whether the ground between its ends is known. */
  public boolean isSurveyed() {
    return route.isPresent();
  }

  /** Whether so little is known of the ground that what lies between its ends may decide. */
  public boolean takenAsEven() {
    return !isSurveyed()
        && (lengthFt > Limit.EVEN_RUN_FT.value() || Math.abs(riseFt) > Limit.EVEN_RISE_FT.value());
  }

  /** Height of the lowest place known over the source, ft; 0 or less. */
  public double lowestFt() {
    return ground().map(Ground::lowestFt).orElse(Math.min(0, riseFt));
  }

  /** Height of the highest place known over the source, ft; 0 or more. */
  public double highestFt() {
    return ground().map(Ground::highestFt).orElse(Math.max(0, riseFt));
  }

  /** The ground from source to appliance; empty where only the ends are known. */
  public Optional<Ground> ground() {
    return route.map(Route::ground);
  }
}
