package hosewright.line.assembly;

import hosewright.thread.End;

/**
 * Which ends of a section come with their gasket in; an end that carries none never does.
 *
 * @param atInlet at the end named first
 */
public record FittedGaskets(boolean atInlet, boolean atOutlet) {
  public static final FittedGaskets NONE = new FittedGaskets(false, false);

  /** What is there already has its gaskets. */
  public static FittedGaskets atBoth(End inlet, End outlet) {
    return of(inlet, true, outlet, true);
  }

  /**
   * What the makers of the two ends say.
   *
   * @param withInlet whether what carries the inlet comes with its gaskets
   */
  public static FittedGaskets of(End inlet, boolean withInlet, End outlet, boolean withOutlet) {
    return new FittedGaskets(
        withInlet && inlet.carriesGasket(), withOutlet && outlet.carriesGasket());
  }
}
