package hosewright.hydraulics.law;

/** Figures of a filled hose and of the water in it. */
public final class Physical {
  /** No hose line carries more; a bound for the search, gpm. */
  public static final double MOST_FLOW_GPM = 100_000;

  /** Standard gravity, ft/s². */
  public static final double GRAVITY_FT_S2 = 32.17405;

  /** Pressure of a foot of water, psi; taught as 0.434 (pump operator course notes). */
  public static final double PSI_PER_FT = 0.434;

  /** Weight of a US gallon of water, lb (Lewis County Fire District 13, Basic Hydraulics). */
  public static final double WATER_LB_PER_GAL = 8.34;

  private static final double IN3_PER_GAL = 231;
  static final double WATER_LB_PER_FT3 = 62.4;

  private Physical() {}

  /** Mean velocity, ft/s, of a flow in one hose: 0.4085 Q/d². */
  public static double velocityFtPerS(double flowGpm, double boreIn) {
    Given.flow(flowGpm);
    double areaIn2 = Math.PI / 4 * bore(boreIn) * boreIn;
    return flowGpm * IN3_PER_GAL / areaIn2 / 12 / 60;
  }

  /** Water that fills one hose, US gal; a hose under pressure swells and holds more. */
  public static double volumeGal(double boreIn, double lengthFt) {
    Given.between("length", lengthFt, 0, 1e6, "ft");
    return Math.PI / 4 * bore(boreIn) * boreIn * lengthFt * 12 / IN3_PER_GAL;
  }

  /** Weight of that water, lb. */
  public static double waterWeightLb(double boreIn, double lengthFt) {
    return volumeGal(boreIn, lengthFt) * WATER_LB_PER_GAL;
  }

  /** Minutes to fill a volume at a flow over 0. */
  public static double fillMinutes(double volumeGal, double flowGpm) {
    Given.between("volume", volumeGal, 0, 1e12, "gal");
    return volumeGal / Given.positive("flow", flowGpm, MOST_FLOW_GPM, "gpm");
  }

  /**
   * Pressure rise, psi, when the flow is stopped at once: Joukowsky's {@code ρ a Δv}. An upper
   * bound: it is reached only if the valve closes faster than {@link #returnTimeS}.
   *
   * @param waveSpeedFtPerS of the filled hose: {@link WaveSpeeds} has a low and a high estimate
   */
  public static double surgePsi(double velocityFtPerS, double waveSpeedFtPerS) {
    return surgePsi(WATER_LB_PER_FT3, velocityFtPerS, waveSpeedFtPerS);
  }

  public static double surgePsi(double lbPerFt3, double velocityFtPerS, double waveSpeedFtPerS) {
    Given.between("velocity", velocityFtPerS, 0, 1e9, "ft/s");
    Given.positive("wave speed", waveSpeedFtPerS, 1e6, "ft/s");
    return lbPerFt3 / GRAVITY_FT_S2 * waveSpeedFtPerS * velocityFtPerS / 144;
  }

  /** Seconds a pressure wave takes to the source and back, 2L/a: a valve must close slower. */
  public static double returnTimeS(double lengthFt, double waveSpeedFtPerS) {
    Given.between("length", lengthFt, 0, 1e6, "ft");
    return 2 * lengthFt / Given.positive("wave speed", waveSpeedFtPerS, 1e6, "ft/s");
  }

  private static double bore(double boreIn) {
    return Given.between("bore", boreIn, 0.05, 60, "in");
  }
}
