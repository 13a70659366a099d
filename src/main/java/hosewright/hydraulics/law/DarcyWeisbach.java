package hosewright.hydraulics.law;

/**
 * Loss by Darcy and Weisbach, {@code f (L/D) V²/2g}, with the friction factor by Colebrook for
 * turbulent flow and 64/Re for laminar flow below Re 2040.
 *
 * <p>Sources: Colebrook, J. Inst. Civil Eng. 11 (1939) 133; Avila and others, Science 333 (2011)
 * 192, for the limit of laminar flow.
 *
 * @param roughnessIn absolute roughness of the lining, in, 0 up to a twentieth of the bore
 * @param boreIn inside diameter, in, 0.05 to 60
 * @param water what runs through it
 */
public record DarcyWeisbach(double roughnessIn, double boreIn, Water water) implements FrictionLaw {
  private static final double LAMINAR_LIMIT = 2040;

  // Below these the laminar law divides by what is next to nothing.
  private static final double SMALLEST_FLOW_GPM = 1e-12;
  private static final double SMALLEST_LOSS_PSI = 1e-30;

  public DarcyWeisbach {
    Given.between("bore", boreIn, 0.05, 60, "in");
    Given.between("roughness", roughnessIn, 0, boreIn / 20, "in");
  }

  /** The law for water at a temperature, 32 to 212 °F. */
  public DarcyWeisbach(double roughnessIn, double boreIn, double temperatureF) {
    this(roughnessIn, boreIn, Water.atF(temperatureF));
  }

  @Override
  public double lossPsi(double flowGpm, double lengthFt) {
    Given.between("length", lengthFt, 0, 1e6, "ft");
    if (flowGpm < SMALLEST_FLOW_GPM && flowGpm >= 0) {
      return 0;
    }
    double velocity = Physical.velocityFtPerS(flowGpm, boreIn);
    double boreFt = boreIn / 12;
    double factor = frictionFactor(reynolds(velocity), roughnessIn / boreIn);
    double headFt = factor * lengthFt / boreFt * velocity * velocity / (2 * Physical.GRAVITY_FT_S2);
    return headFt * water.densityLbPerFt3() / 144;
  }

  @Override
  public double flowGpm(double lossPsi, double lengthFt) {
    Given.between("loss", lossPsi, 0, 1e20, "psi");
    Given.positive("length", lengthFt, 1e6, "ft");
    if (lossPsi < SMALLEST_LOSS_PSI) {
      return 0;
    }
    double boreFt = boreIn / 12;
    double viscosity = water.kinematicViscosityFt2PerS();
    double slope = water.headFt(lossPsi) / lengthFt;
    double shear = Math.sqrt(2 * Physical.GRAVITY_FT_S2 * boreFt * slope);
    double velocity =
        -2 * shear * Math.log10(roughnessIn / boreIn / 3.7 + 2.51 * viscosity / (boreFt * shear));
    if (reynolds(velocity) < LAMINAR_LIMIT) {
      // The factor jumps up where flow turns turbulent, so a band of losses belongs to that point.
      double laminar = Physical.GRAVITY_FT_S2 * boreFt * boreFt * slope / (32 * viscosity);
      velocity = Math.min(laminar, LAMINAR_LIMIT * viscosity / boreFt);
    }
    return velocity / Physical.velocityFtPerS(1, boreIn);
  }

  @Override
  public String name() {
    return "darcy-weisbach";
  }

  /**
   * The Darcy friction factor: 64/Re below Re 2040, else Colebrook's {@code 1/√f = -2 log10(ε/3.7D
   * + 2.51/(Re √f))}, solved to the last digits.
   *
   * @param reynolds over 0
   * @param relativeRoughness roughness over bore, 0 to 0.05
   */
  public static double frictionFactor(double reynolds, double relativeRoughness) {
    Given.between("Reynolds number", reynolds, 1e-20, 1e20, "");
    Given.between("relative roughness", relativeRoughness, 0, 0.05, "");
    if (reynolds < LAMINAR_LIMIT) {
      return 64 / reynolds;
    }
    double rough = relativeRoughness / 3.7;
    double smooth = 2.51 / reynolds;
    double x = 7; // 1/√f; Newton's steps on it converge from any start in the turbulent range
    for (int i = 0; i < 12; i++) {
      double inner = rough + smooth * x;
      double step = (x + 2 * Math.log10(inner)) / (1 + 2 / Math.log(10) * smooth / inner);
      x -= step;
      if (Math.abs(step) < 1e-13 * x) {
        break;
      }
    }
    return 1 / (x * x);
  }

  public double reynolds(double velocityFtPerS) {
    return velocityFtPerS * boreIn / 12 / water.kinematicViscosityFt2PerS();
  }
}
