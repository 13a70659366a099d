package hosewright.hydraulics;

import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;

/**
 * Hose of one kind, alone or as equal lines side by side that share the flow.
 *
 * @param name what the user calls it
 * @param law friction of one line
 * @param lengthFt length of one line, ft, over 0
 * @param ground how high the ground lies under it; its end no farther up or down than it is long
 * @param boreIn inside diameter, in
 * @param parallelLines equal lines side by side, 1 or more
 * @param sections coupled sections in one line, 1 or more
 */
public record HoseLeg(
    String name,
    FrictionLaw law,
    double lengthFt,
    Ground ground,
    double boreIn,
    int parallelLines,
    int sections)
    implements LineElement {
  private static final double ROUNDING = 1e-9;

  public HoseLeg {
    Given.positive("length", lengthFt, 1_000_000, "ft");
    if (!(Math.abs(ground.riseFt()) <= lengthFt * (1 + ROUNDING))) {
      throw Given.refused(
          "rise",
          ground.riseFt(),
          "ft",
          "no more than the length of the hose, " + Given.plain(lengthFt) + " ft");
    }
    Given.between("bore", boreIn, 0.05, 60, "in");
    Given.between("parallel lines", parallelLines, 1, 100, "");
    Given.between("sections", sections, 1, 100_000, "");
  }

  /**
   * Hose on ground that rises evenly.
   *
   * @param riseFt height gained over it, ft; negative downhill
   */
  public HoseLeg(
      String name,
      FrictionLaw law,
      double lengthFt,
      double riseFt,
      double boreIn,
      int parallelLines,
      int sections) {
    this(name, law, lengthFt, Ground.even(lengthFt, riseFt), boreIn, parallelLines, sections);
  }

  /** One line in one section on the level. */
  public HoseLeg(String name, FrictionLaw law, double lengthFt, double boreIn) {
    this(name, law, lengthFt, 0, boreIn, 1, 1);
  }

  @Override
  public double riseFt() {
    return ground.riseFt();
  }

  @Override
  public Kind kind() {
    return Kind.FRICTION;
  }

  @Override
  public double lossPsi(double flowGpm) {
    return law.lossPsi(flowGpm / parallelLines, lengthFt);
  }

  /** The flow of all its lines together, gpm, that loses this pressure. */
  double flowGpm(double lossPsi) {
    return law.flowGpm(lossPsi, lengthFt) * parallelLines;
  }

  /** Velocity in one line, ft/s. */
  public double velocityFtPerS(double flowGpm) {
    return Physical.velocityFtPerS(flowGpm / parallelLines, boreIn);
  }

  /** Water that fills all its lines, US gal. */
  public double volumeGal() {
    return Physical.volumeGal(boreIn, lengthFt) * parallelLines;
  }
}
