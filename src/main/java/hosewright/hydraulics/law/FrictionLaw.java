package hosewright.hydraulics.law;

/** How much pressure a hose takes from the water that runs through it. */
public sealed interface FrictionLaw permits CoefficientLaw, HazenWilliams, DarcyWeisbach {

  /**
   * Pressure lost over a length, psi; grows with flow and length, 0 at no flow.
   *
   * @param flowGpm flow in this hose, gpm, 0 or more
   * @param lengthFt length, ft, 0 or more
   */
  double lossPsi(double flowGpm, double lengthFt);

  /** The flow, gpm, that loses this pressure over the length: the inverse of {@link #lossPsi}. */
  double flowGpm(double lossPsi, double lengthFt);

  /** The law's name as scripts read it: coefficient, hazen-williams or darcy-weisbach. */
  String name();
}
