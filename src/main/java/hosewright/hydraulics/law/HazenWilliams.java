package hosewright.hydraulics.law;

/**
 * Loss by Hazen and Williams: {@code 4.52 L Q^1.85 / (C^1.85 d^4.87)}, psi; for water near room
 * temperature in turbulent flow.
 *
 * <p>Source: the form sprinkler practice uses (NFPA 13, friction loss formula).
 *
 * @param c Hazen-Williams coefficient, 10 to 300: 150 plastic, 140 new steel, 120 old steel
 * @param boreIn inside diameter, in, 0.05 to 60
 */
public record HazenWilliams(double c, double boreIn) implements FrictionLaw {
  public HazenWilliams {
    Given.between("Hazen-Williams coefficient", c, 10, 300, "");
    Given.between("bore", boreIn, 0.05, 60, "in");
  }

  @Override
  public double lossPsi(double flowGpm, double lengthFt) {
    Given.between("length", lengthFt, 0, 1e6, "ft");
    return 4.52 * lengthFt * Math.pow(Given.flow(flowGpm) / c, 1.85) / Math.pow(boreIn, 4.87);
  }

  @Override
  public double flowGpm(double lossPsi, double lengthFt) {
    Given.between("loss", lossPsi, 0, 1e20, "psi");
    Given.positive("length", lengthFt, 1e6, "ft");
    return c * Math.pow(lossPsi * Math.pow(boreIn, 4.87) / (4.52 * lengthFt), 1 / 1.85);
  }

  @Override
  public String name() {
    return "hazen-williams";
  }
}
