package hosewright.hydraulics.law;

/**
 * Liquid water at one temperature and about atmospheric pressure.
 *
 * @param densityLbPerFt3 weight density under standard gravity, lb/ft³
 * @param kinematicViscosityFt2PerS ft²/s
 */
public record Water(double densityLbPerFt3, double kinematicViscosityFt2PerS) {
  private static final double KG_PER_M3_IN_LB_PER_FT3 = 0.3048 * 0.3048 * 0.3048 / 0.45359237;
  private static final double M2_IN_FT2 = 1 / (0.3048 * 0.3048);

  public Water {
    Given.positive("water density", densityLbPerFt3, 100, "lb/ft3");
    Given.positive("water viscosity", kinematicViscosityFt2PerS, 1, "ft2/s");
  }

  /**
   * Water at a temperature, 32 to 212 °F.
   *
   * @throws hosewright.problem.BadInputException outside that range
   */
  public static Water atF(double temperatureF) {
    Given.between("water temperature", temperatureF, 32, 212, "°F");
    double celsius = (temperatureF - 32) / 1.8;
    double densityKgPerM3 = densityKgPerM3(celsius);
    double kinematicM2PerS = viscosityMilliPascalS(celsius) / 1000 / densityKgPerM3;
    return new Water(densityKgPerM3 * KG_PER_M3_IN_LB_PER_FT3, kinematicM2PerS * M2_IN_FT2);
  }

  /** How high a column of it stands on a pressure, ft. */
  public double headFt(double psi) {
    return psi * 144 / densityLbPerFt3;
  }

  /** Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16; 0 to 150 °C. */
  static double densityKgPerM3(double t) {
    double numerator =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return numerator / (1 + 16.879850e-3 * t);
  }

  /** Laliberté, J. Chem. Eng. Data 52 (2007) 321, equation 11; 0 to 150 °C. */
  static double viscosityMilliPascalS(double t) {
    return (t + 246) / ((0.05594 * t + 5.2842) * t + 137.37);
  }
}
