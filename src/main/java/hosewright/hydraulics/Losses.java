package hosewright.hydraulics;

/**
 * What a line takes at one flow, by kind, psi.
 *
 * @param frictionPsi in the hose alone
 * @param elevationPsi by the rise; negative downhill
 * @param fittingPsi in adapters, bends and valves by loss coefficient
 * @param appliancePsi in appliances whose loss is stated
 * @param boostPsi added by relay pumps
 */
public record Losses(
    double frictionPsi,
    double elevationPsi,
    double fittingPsi,
    double appliancePsi,
    double boostPsi) {

  /** All losses less what pumps add: source pressure less pressure at the appliance. */
  public double totalPsi() {
    return frictionPsi + elevationPsi + fittingPsi + appliancePsi - boostPsi;
  }
}
