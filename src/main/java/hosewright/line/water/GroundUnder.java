package hosewright.line.water;

import hosewright.hydraulics.Ground;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import java.util.Optional;

/**
 * The ground under the hose of a line, handed out stretch by stretch from the source on.
 *
 * <p>Hose longer than the way lies in curves all along it, as much in one place as in another. With
 * no route the ground rises evenly from source to appliance.
 */
final class GroundUnder {
  private final Optional<Ground> route;
  private final Ground even;
  private double laidFt;

  private GroundUnder(Optional<Ground> route, Ground even) {
    this.route = route;
    this.even = even;
  }

  static GroundUnder of(Job job, Assembly line) {
    return new GroundUnder(underHose(job, line), Ground.even(line.laidFt(), job.run().riseFt()));
  }

  /** Each leg's hose lies along its own part of the way. */
  private static Optional<Ground> underHose(Job job, Assembly line) {
    Optional<Ground> whole = Optional.empty();
    for (int leg = 0; leg < line.lays().size(); leg++) {
      double lengthFt = line.lays().get(leg).lengthFt();
      Optional<Ground> under = job.run().groundOf(leg).map(ground -> ground.under(lengthFt));
      whole = whole.map(before -> before.then(under.orElseThrow())).or(() -> under);
    }
    return whole;
  }

  /** The ground under the next stretch. */
  Ground next(double lengthFt) {
    double fromFt = laidFt;
    laidFt += lengthFt;
    return route
        .map(ground -> ground.from(fromFt, laidFt))
        .orElseGet(() -> Ground.even(lengthFt, even.riseFt() * lengthFt / even.lengthFt()));
  }
}
