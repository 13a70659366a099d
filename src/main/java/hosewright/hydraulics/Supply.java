package hosewright.hydraulics;

/** What pressure a source gives at a flow; never rises with flow. */
public sealed interface Supply permits FixedPressure, PumpCurve, Hydrant, Inlet {

  /**
   * Pressure at the outlet, psi gauge.
   *
   * @param flowGpm 0 to {@link #mostFlowGpm}
   */
  double pressurePsi(double flowGpm);

  /** Pressure with nothing flowing, psi: what the line stands under when the nozzle is shut. */
  double closedPsi();

  /** A flow, gpm, beyond which the source gives no pressure or is not known. */
  double mostFlowGpm();
}
