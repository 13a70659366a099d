package hosewright.job;

import hosewright.hydraulics.Suction;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * Where the line runs.
 *
 * @param lengthFt distance along the ground, ft
 * @param riseFt height of the appliance above the source, ft; negative downhill
 * @param slack extra hose as a share of the length, 0 or more
 * @param lifted how the pump at its start draws water; empty where it draws none
 * @param district where it is laid, as the dealer's register of local threads names it
 */
public record Run(
    double lengthFt,
    double riseFt,
    double slack,
    Optional<Lifted> lifted,
    Optional<String> district) {

  /**
   * A pump that draws its water from below.
   *
   * @param liftFt height of the pump above the water, ft
   * @param altitudeFt height of the place above the sea, ft
   */
  public record Lifted(double liftFt, double altitudeFt) {}

  /** Hose to lay, ft. */
  public double neededFt() {
    return lengthFt * (1 + slack);
  }

  /** Empty where the length is not known. */
  static Optional<Run> read(Answers answers, List<Problem> problems) {
    Optional<Lifted> lifted = lifted(answers, problems);
    return answers
        .of(JobField.LENGTH)
        .map(
            lengthFt ->
                new Run(
                    lengthFt,
                    answers.of(JobField.RISE).orElse(0.0),
                    answers.of(JobField.SLACK).orElse(0.0),
                    lifted,
                    answers.of(JobField.DISTRICT)));
  }

  /** The lift, if the atmosphere can hold it where the pump stands. */
  private static Optional<Lifted> lifted(Answers answers, List<Problem> problems) {
    double altitudeFt = answers.of(JobField.ALTITUDE).orElse(0.0);
    double waterF = answers.of(JobField.TEMPERATURE).orElseGet(Limit.WATER_TEMPERATURE_F::value);
    Optional<Double> liftFt = answers.of(JobField.LIFT);
    try {
      return liftFt.map(
          ft ->
              new Lifted(
                  Suction.checkedLiftFt(
                      JobField.LIFT.word(), ft, altitudeFt, Math.min(Math.max(waterF, 32), 212)),
                  altitudeFt));
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }
}
