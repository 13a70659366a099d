package hosewright.fleet.budget;

/**
 * A Weibull law of survival over age.
 *
 * @param shape above 1 where hose wears out with age
 * @param scaleYears age that 36.8 % outlive, years
 */
public record Weibull(double shape, double scaleYears) {

  public Weibull {
    if (!(shape > 0 && scaleYears > 0)) {
      throw new IllegalArgumentException("shape and scale must be above zero");
    }
  }

  /** The hazard summed up to an age, years. */
  public double cumulativeHazard(double age) {
    return Math.pow(age / scaleYears, shape);
  }

  public double survivalAt(double age) {
    return Math.exp(-cumulativeHazard(age));
  }

  /** The chance to fail before a later age, given life at the earlier one. */
  public double failureBetween(double age, double later) {
    return -Math.expm1(cumulativeHazard(age) - cumulativeHazard(later));
  }

  /** The age that half outlive, years. */
  public double medianYears() {
    return scaleYears * Math.pow(Math.log(2), 1 / shape);
  }
}
