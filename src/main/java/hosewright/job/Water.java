package hosewright.job;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Supply;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The water that is wanted, and what there is.
 *
 * @param flowGpm flow wanted of all appliances together, US gal/min
 * @param needPsi gauge pressure each appliance needs at its share of that flow, psi
 * @param tipIn diameter of a smooth bore tip, in
 * @param supply what the source gives; empty when only the need is asked
 */
public record Water(
    double flowGpm,
    double needPsi,
    OptionalDouble tipIn,
    Optional<Supply> supply,
    Service service) {

  /**
   * Empty where flow or need is not known.
   *
   * @param appliances that each want the flow stated
   */
  static Optional<Water> read(Answers answers, int appliances, List<Problem> problems) {
    Optional<Supply> supply = new SupplyForm(answers, problems).supply();
    Optional<Double> needPsi = answers.of(JobField.NEED);
    return needPsi
        .flatMap(psi -> flowGpm(answers, psi, problems))
        .map(
            flowGpm ->
                new Water(
                    flowGpm * appliances,
                    needPsi.get(),
                    answers.number(JobField.TIP),
                    supply,
                    Service.read(answers)));
  }

  /** What is wanted of each appliance, else what its tip passes at the pressure it needs. */
  private static Optional<Double> flowGpm(Answers answers, double needPsi, List<Problem> problems) {
    Optional<Double> tipIn = answers.of(JobField.TIP);
    if (answers.given(JobField.FLOW) || tipIn.isEmpty()) {
      return answers.of(JobField.FLOW);
    }
    if (needPsi <= 0) {
      problems.add(
          new Problem(
              JobField.NEED.word(),
              answers.text(JobField.NEED),
              "over 0, where a tip and its pressure say the flow",
              "50 psi"));
      return Optional.empty();
    }
    return tipIn.map(bore -> new Demand.SmoothBore(bore).flowGpm(needPsi));
  }

  Water from(Optional<Supply> other) {
    return new Water(flowGpm, needPsi, tipIn, other, service);
  }

  Water flowing(double otherFlowGpm, double otherNeedPsi) {
    return new Water(otherFlowGpm, otherNeedPsi, tipIn, supply, service);
  }
}
