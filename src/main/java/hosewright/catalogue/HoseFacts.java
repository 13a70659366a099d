package hosewright.catalogue;

import java.util.OptionalDouble;

/**
 * What makes an item a hose, or a part that goes on one.
 *
 * @param type what it is made for
 * @param series the dealer's name for one hose line: sections of a series differ in length and ends
 *     only; couplings and attachments leave it empty
 * @param diameters how wide it is
 * @param lengthFt coupled length of a section, ft; empty for bulk hose, couplings and attachments
 * @param frictionCoefficient C of {@code C (Q/100)^2 (L/100)}, psi per 100 ft at 100 gpm
 * @param waveSpeedFtPerS speed of a pressure wave in the filled hose, ft/s
 */
public record HoseFacts(
    HoseType type,
    String series,
    Diameters diameters,
    OptionalDouble lengthFt,
    OptionalDouble frictionCoefficient,
    OptionalDouble waveSpeedFtPerS) {

  /**
   * How wide a hose is.
   *
   * @param sizeIn nominal hose size, in; not the size of its couplings
   * @param boreIn inside diameter of the hose, in, where it differs from the nominal size
   * @param bowlIn outside diameter of the hose, in, which the bowl of its coupling must match; on a
   *     coupling the bowl it has
   */
  public record Diameters(double sizeIn, OptionalDouble boreIn, OptionalDouble bowlIn) {}

  public double sizeIn() {
    return diameters.sizeIn();
  }

  public OptionalDouble boreIn() {
    return diameters.boreIn();
  }

  public OptionalDouble bowlIn() {
    return diameters.bowlIn();
  }

  /** The bore to calculate with, in: the stated one, else the nominal size. */
  public double boreOrNominalIn() {
    return boreIn().orElse(sizeIn());
  }
}
