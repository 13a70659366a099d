package hosewright.line.plan;

import hosewright.csv.PlainNumber;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.law.FrictionTable;
import hosewright.hydraulics.working.WorkedFigures;
import hosewright.hydraulics.working.Working;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.OtherCoefficient;
import hosewright.line.water.FrictionChoice;
import hosewright.line.water.LegFigures;
import hosewright.line.water.PlanHydraulics;
import java.util.ArrayList;
import java.util.List;

/**
 * What an engineer checks a plan's hydraulics by: the working, and what the other coefficients
 * taught for the hose would give. Written for the plans that are shown, not for all that are looked
 * at.
 */
final class PlanWorking {
  private final Job job;
  private final Assembly line;
  private final Hydraulics result;

  private PlanWorking(Job job, Assembly line, Hydraulics result) {
    this.job = job;
    this.line = line;
    this.result = result;
  }

  /** The result with its working; as it is where there are no figures. */
  static Hydraulics shown(Job job, Assembly line, Hydraulics result) {
    if (!result.calculated()) {
      return result;
    }
    PlanWorking working = new PlanWorking(job, line, result);
    return result.shown(working.others(), working.steps());
  }

  private List<OtherCoefficient> others() {
    List<OtherCoefficient> others = new ArrayList<>();
    for (LegFigures leg : LegFigures.of(job, line)) {
      HoseLine hose = leg.leg().hose();
      String which = line.lays().size() == 1 ? "" : PlainNumber.of(hose.sizeIn()) + " in hose, ";
      for (FrictionTable.Row row : FrictionChoice.others(job, hose)) {
        double morePsi =
            row.law().lossPsi(leg.flowGpm(), leg.lay().lengthFt()) - leg.frictionLossPsi();
        others.add(
            new OtherCoefficient(
                row.c(),
                which + row.howSure(),
                row.source(),
                result.frictionLossPsi() + morePsi,
                result.requiredSourcePsi() + morePsi));
      }
    }
    return others;
  }

  private List<Working.Step> steps() {
    List<LineElement> elements = PlanHydraulics.elements(job, line);
    Solution solution = LineHydraulics.required(elements, job.flowGpm(), job.needPsi());
    List<Working.Step> steps = new ArrayList<>(Working.of(solution));
    job.supply().ifPresent(supply -> steps.addAll(Working.supply(supply, job.flowGpm())));
    figures(steps);
    return steps;
  }

  private void figures(List<Working.Step> steps) {
    double waterGal = 0;
    for (LegFigures leg : LegFigures.of(job, line)) {
      HoseLine hose = leg.leg().hose();
      steps.add(WorkedFigures.velocity(leg.flowGpm(), hose.bore().boreIn()));
      steps.add(WorkedFigures.volume(hose.bore().boreIn(), leg.lay().lengthFt()));
      steps.add(WorkedFigures.surge(leg.velocityFtPerS(), hose.bore().waves().highFtPerS()));
      waterGal += leg.allWaterGal();
    }
    steps.add(WorkedFigures.chargedWeight(result.emptyWeightLb(), waterGal));
    steps.add(WorkedFigures.fill(waterGal, job.flowGpm()));
    if (result.reactionLbf().isPresent()) {
      steps.add(
          job.tipIn().isPresent()
              ? WorkedFigures.solidReaction(job.tipIn().getAsDouble(), job.needPsi())
              : WorkedFigures.fogReaction(job.flowEachGpm(), job.needPsi()));
    }
  }
}
