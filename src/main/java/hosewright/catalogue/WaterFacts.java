package hosewright.catalogue;

import java.util.OptionalDouble;

/**
 * What the water meets in an item.
 *
 * @param waterwayIn narrowest clear bore, in, as its row states it
 * @param lossCoefficient K of a fitting on the velocity head in its smaller waterway
 * @param applianceLossPsi loss stated for appliances, psi: the least from 350 gpm on; of meters and
 *     backflow preventers at any flow
 * @param opening smallest nozzle opening or waterway, in
 * @param kFactor gpm per square root of psi, for nozzles and sprinklers
 * @param ratedFlowGpm what it is made to give or pass, gpm
 * @param ratedPressurePsi pressure it gives that at, psi
 */
public record WaterFacts(
    OptionalDouble waterwayIn,
    OptionalDouble lossCoefficient,
    OptionalDouble applianceLossPsi,
    OptionalDouble opening,
    OptionalDouble kFactor,
    OptionalDouble ratedFlowGpm,
    OptionalDouble ratedPressurePsi) {

  /** Nothing is known. */
  public static final WaterFacts NONE = loss(OptionalDouble.empty(), OptionalDouble.empty());

  /** Of a fitting or appliance of which the loss alone is known. */
  public static WaterFacts loss(OptionalDouble coefficient, OptionalDouble appliancePsi) {
    OptionalDouble none = OptionalDouble.empty();
    return new WaterFacts(none, coefficient, appliancePsi, none, none, none, none);
  }
}
