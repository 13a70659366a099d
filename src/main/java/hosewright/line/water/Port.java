package hosewright.line.water;

import hosewright.hydraulics.law.Physical;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Role;
import hosewright.thread.End;

/**
 * One side of a fitting as the water meets it.
 *
 * @param nominalIn size of the end there, in
 * @param boreIn waterway there, in
 * @param abreast how many like it share the flow of the whole line
 */
public record Port(double nominalIn, double boreIn, int abreast) {

  static Port upstream(Placed part) {
    return of(part, part.upstream().orElseThrow(), part.role() == Role.JOIN);
  }

  static Port downstream(Placed part) {
    return of(part, part.downstream().orElseThrow(), part.role() == Role.SPLIT);
  }

  /**
   * Where water runs fastest: the bore of hose, else the side that a fitting's coefficients are on
   * the velocity of.
   */
  public static Port fastest(Placed part) {
    if (part.isHose()) {
      double boreIn = part.hose().bore().boreIn();
      return new Port(boreIn, boreIn, part.lines());
    }
    Port up = upstream(part);
    Port down = downstream(part);
    return down.headOver(up) > 1 ? down : up;
  }

  /** The narrowest bore of a fitting is taken to lie at its smallest end, or at both. */
  private static Port of(Placed part, End end, boolean branched) {
    boolean smallest = end.sizeIn() <= part.smallestEndIn();
    return new Port(
        end.sizeIn(),
        smallest ? part.waterwayIn() : end.sizeIn(),
        part.lines() * (branched ? part.branches() : 1));
  }

  /**
   * How fast water runs there, ft/s.
   *
   * @param flowGpm of the whole line, gpm
   */
  public double velocityFtPerS(double flowGpm) {
    return Physical.velocityFtPerS(flowGpm / abreast, boreIn);
  }

  /** How much greater a velocity head is here than at another side. */
  double headOver(Port other) {
    double ratio = other.abreast * other.boreIn * other.boreIn / (abreast * boreIn * boreIn);
    return ratio * ratio;
  }
}
