package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;

/**
 * An adapter, bend or valve known by its loss coefficient: {@code K v²/2g} on the velocity in its
 * bore.
 *
 * @param name what the user calls it
 * @param lossCoefficient K, 0 or more
 * @param boreIn waterway the coefficient is on, in
 * @param parallelLines equal lines side by side that each have one
 * @param source where the coefficient comes from, in words
 */
public record Fitting(
    String name, double lossCoefficient, double boreIn, int parallelLines, String source)
    implements LineElement {

  private static final String STATED = "loss coefficient as stated";

  /** Where the coefficients of a change of bore come from. */
  public static final String BORDA_CARNOT =
      "sudden change of bore: Borda and Carnot; Crane Technical Paper 410";

  public Fitting {
    Given.between("loss coefficient", lossCoefficient, 0, 100_000, "");
    Given.between("bore", boreIn, 0.05, 60, "in");
    Given.between("parallel lines", parallelLines, 1, 100, "");
  }

  /** A fitting the whole flow passes. */
  public Fitting(String name, double lossCoefficient, double boreIn) {
    this(name, lossCoefficient, boreIn, 1, STATED);
  }

  /**
   * A sudden change of bore, with K on the smaller one: {@code (1 - β²)²} widening, {@code 0.5 (1 -
   * β²)} narrowing, β the smaller bore over the larger.
   *
   * <p>Source: Borda and Carnot; Crane Technical Paper 410, p. A-26 (1979), where 0.5 (1 - β²) and
   * (1 - β²)² stand for a sudden contraction and enlargement, an angle of 180°. A taper that is not
   * known is taken as sudden, which loses more.
   */
  public static Fitting changeOfBore(String name, double fromIn, double toIn) {
    double smallIn = Math.min(fromIn, toIn);
    double beta = smallIn / Math.max(fromIn, toIn);
    double open = 1 - beta * beta;
    return new Fitting(name, fromIn < toIn ? open * open : 0.5 * open, smallIn, 1, BORDA_CARNOT);
  }

  /** This fitting on each of so many equal lines side by side. */
  public Fitting onEachOf(int lines) {
    return new Fitting(name, lossCoefficient, boreIn, lines, source);
  }

  @Override
  public Kind kind() {
    return Kind.FITTING;
  }

  @Override
  public double lossPsi(double flowGpm) {
    return lossPsi(lossCoefficient, boreIn, flowGpm / parallelLines);
  }

  static double lossPsi(double lossCoefficient, double boreIn, double flowGpm) {
    double velocity = Physical.velocityFtPerS(flowGpm, boreIn);
    return lossCoefficient
        * velocity
        * velocity
        / (2 * Physical.GRAVITY_FT_S2)
        * Physical.PSI_PER_FT;
  }
}
