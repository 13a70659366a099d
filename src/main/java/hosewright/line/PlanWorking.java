package hosewright.line;

import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Physical;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.WorkedFigures;
import hosewright.hydraulics.Working;
import hosewright.line.LineHydraulicsResult.OtherCoefficient;
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
  private final LineHydraulicsResult result;

  private PlanWorking(Job job, Assembly line, LineHydraulicsResult result) {
    this.job = job;
    this.line = line;
    this.result = result;
  }

  /** The result with its working; as it is where there are no figures. */
  static LineHydraulicsResult shown(Job job, Assembly line, LineHydraulicsResult result) {
    if (!result.calculated()) {
      return result;
    }
    PlanWorking working = new PlanWorking(job, line, result);
    return result.shown(working.others(), working.steps());
  }

  private List<OtherCoefficient> others() {
    HoseLine hose = line.frame().hose();
    double flowInOneGpm = job.flowGpm() / line.frame().lines();
    return FrictionChoice.others(job, hose).stream()
        .map(
            row -> {
              double psi = row.law().lossPsi(flowInOneGpm, line.lay().lengthFt());
              return new OtherCoefficient(
                  row.c(),
                  row.howSure(),
                  row.source(),
                  psi,
                  result.requiredSourcePsi() - result.frictionLossPsi() + psi);
            })
        .toList();
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
    HoseLine hose = line.frame().hose();
    int lines = line.frame().lines();
    steps.add(WorkedFigures.velocity(job.flowGpm() / lines, hose.boreIn()));
    steps.add(WorkedFigures.volume(hose.boreIn(), line.lay().lengthFt()));
    steps.add(WorkedFigures.chargedWeight(result.emptyWeightLb(), result.waterGal() * lines));
    steps.add(WorkedFigures.fill(result.waterGal() * lines, job.flowGpm()));
    steps.add(
        WorkedFigures.surge(
            result.velocityFtPerS(), hose.waveSpeedFtPerS().orElse(Physical.FASTEST_WAVE_FT_S)));
    if (result.reactionLbf().isPresent()) {
      steps.add(
          job.tipIn().isPresent()
              ? WorkedFigures.solidReaction(job.tipIn().getAsDouble(), job.needPsi())
              : WorkedFigures.fogReaction(job.flowGpm(), job.needPsi()));
    }
  }
}
