package hosewright.line.search;

import hosewright.hydraulics.Ground;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.water.FittingLoss;
import java.util.List;

/**
 * The place on the way at which the pressure runs out first, and what may still be lost before it:
 * a bound like {@link PressureBudget}'s own. It counts no loss that may come behind the place.
 *
 * @param leftPsi what may be lost before it, psi; infinite where the way has no such place
 * @param share of what the hose of the first leg loses, how much it loses before the place
 */
record HighPlace(double leftPsi, double share) {
  static final HighPlace NONE = new HighPlace(Double.POSITIVE_INFINITY, 0);

  /**
   * The place that lets the hose lose least.
   *
   * @param mostHeldPsi what the source gives, or the most it may hold
   */
  static HighPlace of(Job job, Topology topology, double mostHeldPsi) {
    if (!job.run().way().isSurveyed() || mostHeldPsi == Double.POSITIVE_INFINITY) {
      return NONE;
    }
    Ground ground = job.run().groundOf(0).orElseThrow();
    boolean bearsSuction =
        topology.hose().options().stream()
            .anyMatch(option -> option.rating().vacuumInHg().isPresent());
    boolean alike = topology.hose().options().stream().noneMatch(option -> option.isOwned());
    double heldPsi = mostHeldPsi - lostBefore(job, topology);
    HighPlace first = NONE;
    List<Ground.Point> points = ground.points();
    for (int i = 1; i + 1 < points.size(); i++) {
      Ground.Point here = points.get(i);
      boolean summit =
          here.heightFt() > points.get(i - 1).heightFt()
              && here.heightFt() > points.get(i + 1).heightFt();
      if (bearsSuction && !summit) {
        continue;
      }
      double keptPsi = summit ? Limit.SUMMIT_PSI.value() : 0;
      double leftPsi = heldPsi - here.heightFt() * Physical.PSI_PER_FT - keptPsi;
      // Hose of the buyer's own may lose more or less to the foot, and lie anywhere.
      HighPlace place = new HighPlace(leftPsi, alike ? here.alongFt() / ground.lengthFt() : 0);
      if (place.mostInHosePsi() < first.mostInHosePsi()) {
        first = place;
      }
    }
    return first;
  }

  private double mostInHosePsi() {
    return leftPsi < 0 ? leftPsi : share == 0 ? Double.MAX_VALUE : leftPsi / share;
  }

  private static double lostBefore(Job job, Topology topology) {
    return topology.fixedParts().stream()
        .filter(fixed -> fixed.stretch() == Topology.Stretch.BEFORE_HOSE)
        .mapToDouble(
            fixed ->
                FittingLoss.of(Placed.inLine(fixed.part(), fixed.lines())).lossPsi(job.flowGpm()))
        .sum();
  }

  /** What is left when the hose of the first leg loses so much, psi. */
  HighPlace behindHose(double lossPsi) {
    return new HighPlace(leftPsi - lossPsi * share, share);
  }

  /** What is left when parts between source and hose lose so much, psi. */
  HighPlace behindParts(double lossPsi) {
    return new HighPlace(leftPsi - lossPsi, share);
  }
}
