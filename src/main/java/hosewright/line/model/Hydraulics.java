package hosewright.line.model;

import hosewright.hydraulics.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Pressures, losses and weights of a planned line at the flow asked for.
 *
 * @param pressures at source and appliance, psi
 * @param losses where pressure goes, psi
 * @param friction how the loss in the hose was found, and what other laws give
 * @param forces what pulls and pushes
 * @param filled water, weight and time of the whole line
 * @param profile pressure at every station, flowing and with the nozzle closed; empty where nothing
 *     is calculated
 * @param working each formula with its numbers put in, for a check by hand
 */
public record Hydraulics(
    Pressures pressures,
    Losses losses,
    Friction friction,
    Forces forces,
    Filled filled,
    List<Station> profile,
    List<Working.Step> working) {

  public Hydraulics {
    profile = List.copyOf(profile);
    working = List.copyOf(working);
  }

  /**
   * Pressures at the two ends.
   *
   * @param requiredSourcePsi need plus every loss, or what keeps pressure at a summit where that is
   *     more, psi
   * @param sourcePsi what the source gives at this flow, psi; empty when no source was stated
   * @param deliveredPsi source less every loss, psi; with no source stated, what arrives from one
   *     that holds just what is required
   */
  public record Pressures(
      double requiredSourcePsi, Optional<Double> sourcePsi, double deliveredPsi) {}

  /**
   * Where pressure goes.
   *
   * @param frictionPsi in the hose alone, psi
   * @param elevationPsi psi, negative downhill
   * @param adapterPsi in adapters, psi
   * @param appliancePsi in valves, wyes and meters standing in the line, psi
   * @param pumpedPsi what pumps on the way add, psi; empty where there are none
   */
  public record Losses(
      double frictionPsi,
      double elevationPsi,
      double adapterPsi,
      double appliancePsi,
      Optional<Double> pumpedPsi) {
    public Losses {
      // Plans kept before there were such pumps say nothing of them.
      pumpedPsi = pumpedPsi == null ? Optional.empty() : pumpedPsi;
    }

    /** With no pump on the way. */
    public Losses(double frictionPsi, double elevationPsi, double adapterPsi, double appliancePsi) {
      this(frictionPsi, elevationPsi, adapterPsi, appliancePsi, Optional.empty());
    }
  }

  /**
   * How the loss in the hose was found.
   *
   * @param basis which law and coefficient decided it, in words, with its source
   * @param coefficient C, psi per 100 ft at 100 gpm, of the hose nearest to the source; empty where
   *     another law decided
   * @param crossCheck the other friction laws on the same hose
   * @param others what other friction coefficients taught for the hose would give
   */
  public record Friction(
      String basis,
      Optional<Double> coefficient,
      List<CrossCheck> crossCheck,
      List<OtherCoefficient> others) {}

  /**
   * What pulls and pushes.
   *
   * @param velocityFtPerS in the hose where it is fastest, ft/s
   * @param reactionLbf nozzle reaction, lbf, where the appliance is a nozzle
   * @param surgeLowPsi pressure rise on sudden closure, low estimate of the hose, psi
   * @param surgeHighPsi the same, high estimate, psi
   */
  public record Forces(
      double velocityFtPerS,
      Optional<Double> reactionLbf,
      double surgeLowPsi,
      double surgeHighPsi) {}

  /**
   * The line full of water.
   *
   * @param waterGal in one line from the source, US gal
   * @param emptyWeightLb weight of all hose empty, lb
   * @param chargedWeightLb weight of all hose full of water, lb
   * @param fillMinutes time to fill at the flow asked for, min
   */
  public record Filled(
      double waterGal, double emptyWeightLb, double chargedWeightLb, double fillMinutes) {}

  /** No figures, for a fluid that the laws do not hold for or a plan that could not be laid. */
  public static Hydraulics notCalculated(String reason) {
    return new Hydraulics(
        new Pressures(0, Optional.empty(), 0),
        new Losses(0, 0, 0, 0),
        new Friction(reason, Optional.empty(), List.of(), List.of()),
        new Forces(0, Optional.empty(), 0, 0),
        new Filled(0, 0, 0, 0),
        List.of(),
        List.of());
  }

  /** With what an engineer needs to check it by hand. */
  public Hydraulics shown(List<OtherCoefficient> others, List<Working.Step> steps) {
    return new Hydraulics(
        pressures,
        losses,
        new Friction(friction.basis(), friction.coefficient(), friction.crossCheck(), others),
        forces,
        filled,
        profile,
        steps);
  }

  /** The stations at the source and at the end of every section and part, in order. */
  public List<Station> ends() {
    return profile.stream().filter(station -> station.place() == Place.AT_END).toList();
  }

  /** The stations between source and appliance from which the ground falls to both sides. */
  public List<Station> summits() {
    return summits(profile);
  }

  /** The stations of a profile from which the ground falls to both sides, its ends left out. */
  public static List<Station> summits(List<Station> profile) {
    List<Station> summits = new ArrayList<>();
    double beforeFt = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < profile.size(); i++) {
      double hereFt = profile.get(i).elevationFt();
      double nextFt = profile.get(i + 1).elevationFt();
      if (nextFt < hereFt && beforeFt < hereFt) {
        summits.add(profile.get(i));
      }
      // Parts that stand on one spot, and level ground, rise and fall with what is behind them.
      beforeFt = nextFt == hereFt ? beforeFt : hereFt;
    }
    return summits;
  }

  /** All that is lost between source and appliance, less what pumps add, psi. */
  public double lostPsi() {
    return losses.frictionPsi()
        + losses.elevationPsi()
        + losses.adapterPsi()
        + losses.appliancePsi()
        - losses.pumpedPsi().orElse(0.0);
  }

  /**
   * The summit that the pressure required at the source is for, where that is more than the
   * appliance takes.
   *
   * @param needPsi what the appliance needs, psi
   */
  public Optional<Station> decidingSummit(double needPsi) {
    return pumpedPsi().isEmpty() && requiredSourcePsi() > needPsi + lostPsi() + 1e-6
        ? summits().stream().min(Comparator.comparingDouble(Station::flowingPsi))
        : Optional.empty();
  }

  /** Whether there are figures at all. */
  public boolean calculated() {
    return !profile.isEmpty();
  }

  public double frictionLossPsi() {
    return losses.frictionPsi();
  }

  public String frictionBasis() {
    return friction.basis();
  }

  public Optional<Double> frictionCoefficient() {
    return friction.coefficient();
  }

  public List<CrossCheck> crossCheck() {
    return friction.crossCheck();
  }

  public double elevationLossPsi() {
    return losses.elevationPsi();
  }

  public double adapterLossPsi() {
    return losses.adapterPsi();
  }

  public double applianceLossPsi() {
    return losses.appliancePsi();
  }

  public Optional<Double> pumpedPsi() {
    return losses.pumpedPsi();
  }

  public double requiredSourcePsi() {
    return pressures.requiredSourcePsi();
  }

  public Optional<Double> sourcePsi() {
    return pressures.sourcePsi();
  }

  public double deliveredPsi() {
    return pressures.deliveredPsi();
  }

  public double velocityFtPerS() {
    return forces.velocityFtPerS();
  }

  public Optional<Double> reactionLbf() {
    return forces.reactionLbf();
  }

  public double surgeLowPsi() {
    return forces.surgeLowPsi();
  }

  public double surgeHighPsi() {
    return forces.surgeHighPsi();
  }

  public double waterGal() {
    return filled.waterGal();
  }

  public double emptyWeightLb() {
    return filled.emptyWeightLb();
  }

  public double chargedWeightLb() {
    return filled.chargedWeightLb();
  }

  public double fillMinutes() {
    return filled.fillMinutes();
  }

  public List<OtherCoefficient> otherCoefficients() {
    return friction.others();
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
      double frictionLossPsi) {}

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
   * @param place whether it stands at an end of something; so were all that were kept without it
   */
  public record Station(
      String name,
      double distanceFt,
      double elevationFt,
      double flowingPsi,
      double closedPsi,
      Place place) {

    public Station {
      place = place == null ? Place.AT_END : place;
    }

    /** At the end of a section or a part. */
    public Station(
        String name, double distanceFt, double elevationFt, double flowingPsi, double closedPsi) {
      this(name, distanceFt, elevationFt, flowingPsi, closedPsi, Place.AT_END);
    }

    /** The lower of its two pressures, psi. */
    public double lowestPsi() {
      return Math.min(flowingPsi, closedPsi);
    }

    /** The higher of its two pressures, psi. */
    public double highestPsi() {
      return Math.max(flowingPsi, closedPsi);
    }
  }

  /** Where a station stands. */
  public enum Place {
    /** At the end of a section or a part, or at the source. */
    AT_END,
    /** Within a section, where the ground turns. */
    WITHIN
  }
}
