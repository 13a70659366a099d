package hosewright.hydraulics.law;

/**
 * Loss by the hose's own coefficient: {@code C (Q/100)² (L/100)}, the law fire hose is taught by.
 *
 * <p>Source: City of Rohnert Park training slides, Calculating Friction Loss.
 *
 * @param c psi per 100 ft at 100 gpm, over 0 up to 10,000
 */
public record CoefficientLaw(double c) implements FrictionLaw {
  public CoefficientLaw {
    Given.positive("friction coefficient", c, 10_000, "");
  }

  @Override
  public double lossPsi(double flowGpm, double lengthFt) {
    double hundreds = Given.flow(flowGpm) / 100;
    return c * hundreds * hundreds * (Given.between("length", lengthFt, 0, 1e6, "ft") / 100);
  }

  @Override
  public double flowGpm(double lossPsi, double lengthFt) {
    Given.between("loss", lossPsi, 0, 1e20, "psi");
    return 100 * Math.sqrt(lossPsi / (c * Given.positive("length", lengthFt, 1e6, "ft") / 100));
  }

  @Override
  public String name() {
    return "coefficient";
  }
}
