package hosewright.job;

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
    return answers
        .of(JobField.FLOW)
        .flatMap(
            flowGpm ->
                answers
                    .of(JobField.NEED)
                    .map(
                        needPsi ->
                            new Water(
                                flowGpm * appliances,
                                needPsi,
                                answers.number(JobField.TIP),
                                supply,
                                Service.read(answers))));
  }

  Water from(Optional<Supply> other) {
    return new Water(flowGpm, needPsi, tipIn, other, service);
  }

  Water flowing(double otherFlowGpm, double otherNeedPsi) {
    return new Water(otherFlowGpm, otherNeedPsi, tipIn, supply, service);
  }
}
