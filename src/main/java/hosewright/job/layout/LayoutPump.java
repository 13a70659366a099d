package hosewright.job.layout;

import hosewright.hydraulics.Boost;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.suction.Drafting;
import hosewright.thread.End;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pump of the buyer's that stands where one leg ends and others begin.
 *
 * @param name what legs call it
 * @param intake the end that takes the leg before it
 * @param discharges the ends that the legs behind it may begin at
 * @param curve what it adds to its intake
 * @param leastIntakePsi what its intake must keep while it flows, psi
 * @param reliefPsi setting of its relief valve, psi; empty where none is stated
 * @param drafting how it draws its water, where it draws it from below
 */
public record LayoutPump(
    String name,
    End intake,
    List<End> discharges,
    PumpCurve curve,
    double leastIntakePsi,
    OptionalDouble reliefPsi,
    Optional<Drafting> drafting) {
  public LayoutPump {
    discharges = List.copyOf(discharges);
  }

  /** What it does at a flow. */
  public Boost at(double flowGpm) {
    return Boost.of(curve, flowGpm, leastIntakePsi, reliefPsi.orElse(Double.POSITIVE_INFINITY));
  }

  /** Whether its curve says what it gives at a flow. */
  public boolean reaches(double flowGpm) {
    return flowGpm <= curve.mostFlowGpm();
  }
}
