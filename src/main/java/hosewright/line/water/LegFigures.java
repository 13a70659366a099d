package hosewright.line.water;

import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.SectionOption;
import java.util.ArrayList;
import java.util.List;

/**
 * What one leg of a line does at the flow asked for.
 *
 * @param flowGpm flow in one of its lines
 * @param frictionLossPsi loss in its hose
 */
public record LegFigures(
    LegShape leg,
    Lay lay,
    double flowGpm,
    double frictionLossPsi,
    double velocityFtPerS,
    Surge surge,
    Load load) {

  /** One for each leg. */
  public static List<LegFigures> of(Job job, Assembly line) {
    List<LegFigures> figures = new ArrayList<>();
    for (int i = 0; i < line.lays().size(); i++) {
      figures.add(of(job, line.topology().legs().get(i), line.lays().get(i)));
    }
    return figures;
  }

  private static LegFigures of(Job job, LegShape leg, Lay lay) {
    HoseLine hose = leg.hose();
    double flowGpm = job.flowGpm() / leg.lines();
    double velocity = Physical.velocityFtPerS(flowGpm, hose.bore().boreIn());
    return new LegFigures(
        leg,
        lay,
        flowGpm,
        frictionPsi(job, hose, lay, flowGpm),
        velocity,
        new Surge(
            Physical.surgePsi(velocity, hose.bore().waves().lowFtPerS()),
            Physical.surgePsi(velocity, hose.bore().waves().highFtPerS())),
        new Load(
            Physical.volumeGal(hose.bore().boreIn(), lay.lengthFt()),
            emptyWeightLb(leg, lay),
            chargedWeightLb(leg, lay)));
  }

  /** Loss of one line with its share of the flow, psi. */
  public static double frictionPsi(Job job, HoseLine hose, Lay lay, double flowGpm) {
    double psi = 0;
    for (int i = 0; i < hose.options().size(); i++) {
      SectionOption option = hose.options().get(i);
      double lengthFt = lay.counts().get(i) * option.lengthFt();
      if (lengthFt > 0) {
        FrictionLaw law = FrictionChoice.of(job, hose, option.isOwned()).law();
        psi += law.lossPsi(flowGpm, lengthFt);
      }
    }
    return psi;
  }

  private static double emptyWeightLb(LegShape leg, Lay lay) {
    return lineWeightLb(leg, lay) * leg.lines();
  }

  private static double lineWeightLb(LegShape leg, Lay lay) {
    double weightLb = 0;
    for (int i = 0; i < lay.counts().size(); i++) {
      weightLb += leg.hose().options().get(i).weightLb() * lay.counts().get(i);
    }
    return weightLb;
  }

  /** Weight of a leg's lines full of water, lb. */
  public static double chargedWeightLb(LegShape leg, Lay lay) {
    return chargedWeightLb(leg, lineWeightLb(leg, lay), lay.lengthFt());
  }

  /**
   * Weight of a leg's lines of a length, full of water, lb.
   *
   * @param lineLb weight of one line, empty, lb
   */
  public static double chargedWeightLb(LegShape leg, double lineLb, double lengthFt) {
    double waterGal = Physical.volumeGal(leg.hose().bore().boreIn(), lengthFt);
    return (lineLb + waterGal * Physical.WATER_LB_PER_GAL) * leg.lines();
  }

  /** Water in all its lines, US gal. */
  public double allWaterGal() {
    return load.waterGal() * leg.lines();
  }

  /** What shutting it off adds, at the slowest and the fastest. */
  public record Surge(double lowPsi, double highPsi) {}

  /**
   * The water it holds and what it weighs.
   *
   * @param waterGal water in one of its lines
   * @param emptyWeightLb weight of its lines together, empty
   * @param chargedWeightLb the same full of water
   */
  public record Load(double waterGal, double emptyWeightLb, double chargedWeightLb) {}
}
