package hosewright.line;

import hosewright.hydraulics.Working;
import java.util.List;
import java.util.Optional;

/**
 * Pressures, losses and weights of a planned line at the flow asked for.
 *
 * @param frictionLossPsi loss in the hose alone, psi
 * @param frictionBasis which law and coefficient decided it, in words, with its source
 * @param frictionCoefficient C the friction was calculated with, psi per 100 ft at 100 gpm; empty
 *     where another law decided
 * @param crossCheck the other friction laws on the same hose
 * @param elevationLossPsi psi, negative downhill
 * @param adapterLossPsi loss in adapters, psi
 * @param applianceLossPsi loss in valves, wyes and meters standing in the line, psi
 * @param requiredSourcePsi need plus every loss, psi
 * @param sourcePsi what the source gives at this flow, psi; empty when no source was stated
 * @param deliveredPsi source less every loss, psi; with no source stated, the need itself
 * @param velocityFtPerS in the hose, ft/s
 * @param reactionLbf nozzle reaction, lbf, where the appliance is a nozzle
 * @param surgeLowPsi pressure rise on sudden closure with the slowest wave, psi
 * @param surgeHighPsi the same with the fastest wave, psi: an upper bound
 * @param waterGal water in one filled line, US gal
 * @param emptyWeightLb weight of all hose empty, lb
 * @param chargedWeightLb weight of all hose full of water, lb
 * @param fillMinutes time to fill at the flow asked for, min
 * @param profile pressure at every station, flowing and with the nozzle closed
 * @param otherCoefficients what other friction coefficients taught for the hose would give
 * @param working each formula with its numbers put in, for a check by hand
 */
public record LineHydraulicsResult(
    double frictionLossPsi,
    String frictionBasis,
    Optional<Double> frictionCoefficient,
    List<CrossCheck> crossCheck,
    double elevationLossPsi,
    double adapterLossPsi,
    double applianceLossPsi,
    double requiredSourcePsi,
    Optional<Double> sourcePsi,
    double deliveredPsi,
    double velocityFtPerS,
    Optional<Double> reactionLbf,
    double surgeLowPsi,
    double surgeHighPsi,
    double waterGal,
    double emptyWeightLb,
    double chargedWeightLb,
    double fillMinutes,
    List<Station> profile,
    List<OtherCoefficient> otherCoefficients,
    List<Working.Step> working) {

  public LineHydraulicsResult {
    // A quote that was frozen before these were kept is read without them.
    frictionCoefficient = frictionCoefficient == null ? Optional.empty() : frictionCoefficient;
    otherCoefficients = otherCoefficients == null ? List.of() : List.copyOf(otherCoefficients);
    working = working == null ? List.of() : List.copyOf(working);
  }

  /** No figures, for a fluid that the laws do not hold for or a plan that could not be laid. */
  static LineHydraulicsResult notCalculated(String reason) {
    return new LineHydraulicsResult(
        0,
        reason,
        Optional.empty(),
        List.of(),
        0,
        0,
        0,
        0,
        Optional.empty(),
        0,
        0,
        Optional.empty(),
        0,
        0,
        0,
        0,
        0,
        0,
        List.of(),
        List.of(),
        List.of());
  }

  /** These figures with what an engineer needs to check it by hand. */
  LineHydraulicsResult shown(List<OtherCoefficient> others, List<Working.Step> steps) {
    return new LineHydraulicsResult(
        frictionLossPsi,
        frictionBasis,
        frictionCoefficient,
        crossCheck,
        elevationLossPsi,
        adapterLossPsi,
        applianceLossPsi,
        requiredSourcePsi,
        sourcePsi,
        deliveredPsi,
        velocityFtPerS,
        reactionLbf,
        surgeLowPsi,
        surgeHighPsi,
        waterGal,
        emptyWeightLb,
        chargedWeightLb,
        fillMinutes,
        profile,
        others,
        steps);
  }

  /** Whether there are figures at all. */
  public boolean calculated() {
    return !profile.isEmpty();
  }

  /**
   * Another law's answer for the same hose.
   *
   * @param law "hazen-williams" or "darcy-weisbach"
   * @param c Hazen-Williams coefficient, empty for the other law
   * @param roughnessIn absolute roughness, in, empty for the other law
   * @param waterTemperatureF what the water's density and viscosity were taken at, °F; empty for
   *     the other law
   */
  public record CrossCheck(
      String law,
      Optional<Double> c,
      Optional<Double> roughnessIn,
      Optional<Double> waterTemperatureF,
      double boreIn,
      double frictionLossPsi) {

    public CrossCheck {
      waterTemperatureF = waterTemperatureF == null ? Optional.empty() : waterTemperatureF;
    }
  }

  /**
   * What another coefficient would give.
   *
   * @param c psi per 100 ft at 100 gpm
   * @param howSure how sure the value is, in words
   * @param source where it is taught
   * @param frictionLossPsi loss in the hose with it, psi
   * @param requiredSourcePsi what the source would have to hold with it, psi
   */
  public record OtherCoefficient(
      double c, String howSure, String source, double frictionLossPsi, double requiredSourcePsi) {}

  /**
   * A point along the line.
   *
   * @param distanceFt hose laid up to here, ft
   * @param elevationFt height above the source, ft
   * @param flowingPsi gauge pressure with water flowing, psi
   * @param closedPsi gauge pressure with the nozzle shut, psi
   */
  public record Station(
      String name, double distanceFt, double elevationFt, double flowingPsi, double closedPsi) {}
}
