package hosewright.hydraulics.suction;

import hosewright.hydraulics.StatedLimit;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Water;

/** How far the atmosphere can push water up a suction line. */
public final class Suction {
  private static final double KPA_IN_PSI = 6.894757;

  private static final double DEPENDABLE_SHARE = StatedLimit.named("suction lift share");

  /** How warm open water is taken to be where nobody said, °F. */
  public static final double USUAL_WATER_F = StatedLimit.named("water temperature");

  private Suction() {}

  /**
   * Air pressure at a height above sea level, psi absolute, -1,500 to 36,000 ft.
   *
   * <p>Source: U.S. Standard Atmosphere 1976, troposphere: {@code 14.696 (1 - 6.8756e-6 h)^5.2559}.
   */
  public static double atmosphericPsia(double altitudeFt) {
    Given.between("altitude", altitudeFt, -1_500, 36_000, "ft");
    return 14.696 * Math.pow(1 - 6.8756e-6 * altitudeFt, 5.2559);
  }

  /**
   * Pressure at which water boils, psi absolute, 32 to 212 °F.
   *
   * <p>Source: Buck's equation (1996 constants), {@code 0.61121 exp((18.678 - t/234.5) t/(257.14 +
   * t))} kPa, t in °C.
   */
  public static double vapourPsia(double temperatureF) {
    Given.between("water temperature", temperatureF, 32, 212, "°F");
    double celsius = (temperatureF - 32) / 1.8;
    double kilopascal =
        0.61121 * Math.exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
    return kilopascal / KPA_IN_PSI;
  }

  /**
   * Greatest height, ft, water can be lifted by suction with no flow and no loss: atmospheric less
   * boiling pressure, as feet of water. A working pump lifts much less.
   */
  public static double limitFt(double altitudeFt, double temperatureF) {
    double psi = atmosphericPsia(altitudeFt) - vapourPsia(temperatureF);
    return Water.atF(temperatureF).headFt(Math.max(0, psi));
  }

  /**
   * The lift a pump manages dependably, ft, where nothing but where it stands is known of it and of
   * its suction hose: two thirds of {@link #limitFt}. A rule of thumb; {@link SuctionLine} asks the
   * pump and the hose.
   *
   * <p>Source: common practice, no source.
   */
  public static double dependableLiftFt(double altitudeFt, double temperatureF) {
    return DEPENDABLE_SHARE * limitFt(altitudeFt, temperatureF);
  }

  /**
   * The lift, ft, if the atmosphere can hold it.
   *
   * @throws hosewright.problem.BadInputException when the lift is below 0 or beyond the limit
   */
  public static double checkedLiftFt(
      String field, double liftFt, double altitudeFt, double temperatureF) {
    double limitFt = limitFt(altitudeFt, temperatureF);
    if (liftFt >= 0 && liftFt < limitFt) {
      return liftFt;
    }
    throw Given.refused(
        field,
        liftFt,
        "ft",
        String.format(
            "no pump lifts water by suction beyond the %.1f ft the atmosphere holds at %s ft and"
                + " %s °F; set the pump lower or push the water up from below",
            limitFt, Given.plain(altitudeFt), Given.plain(temperatureF)));
  }
}
