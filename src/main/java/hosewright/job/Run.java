package hosewright.job;

import hosewright.hydraulics.Ground;
import hosewright.hydraulics.suction.Suction;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * Where the line runs.
 *
 * @param way how far, and over what ground
 * @param slack extra hose as a share of the length, 0 or more
 * @param lifted how the pump at its start draws water; empty where it draws none
 * @param district where it is laid, as the dealer's register of local threads names it
 */
public record Run(Way way, double slack, Optional<Lifted> lifted, Optional<String> district) {

  /**
   * A pump that draws its water from below.
   *
   * @param liftFt height of the pump above the water, ft
   * @param altitudeFt height of the place above the sea, ft
   */
  public record Lifted(double liftFt, double altitudeFt) {}

  /** A part of it over ground that is taken as even. */
  public Run part(double lengthFt) {
    double riseFt = riseFt() * lengthFt / lengthFt();
    return new Run(Way.between(lengthFt, riseFt), slack, lifted, district);
  }

  /** Distance along the ground, ft. */
  public double lengthFt() {
    return way.lengthFt();
  }

  /** Height of the appliance above the source, ft; negative downhill. */
  public double riseFt() {
    return way.riseFt();
  }

  /** Hose to lay, ft. */
  public double neededFt() {
    return lengthFt() * (1 + slack);
  }

  /** Height over the source at which a leg begins, ft; 0 where only the ends are known. */
  public double heightFtAtStartOf(int leg) {
    return leg == 0 ? 0 : way.ground().map(ground -> ground.heightFt(lengthFt())).orElse(0.0);
  }

  /** The ground under each leg of a line; empty where only the ends are known. */
  public Optional<Ground> groundOf(int leg) {
    return way.ground()
        .map(
            ground ->
                leg == 0 ? ground.from(0, lengthFt()) : ground.from(lengthFt(), ground.lengthFt()));
  }

  /** Empty where the length is not known. */
  static Optional<Run> read(Answers answers, List<Problem> problems) {
    Optional<Lifted> lifted = lifted(answers, problems);
    return way(answers, problems)
        .map(
            way ->
                new Run(
                    way,
                    answers.of(JobField.SLACK).orElse(0.0),
                    lifted,
                    answers.of(JobField.DISTRICT)));
  }

  /** A route says how long and how high at once, so that nothing else may say another thing. */
  private static Optional<Way> way(Answers answers, List<Problem> problems) {
    if (!answers.given(JobField.ROUTE)) {
      double riseFt = answers.of(JobField.RISE).orElse(0.0);
      return answers.of(JobField.LENGTH).map(lengthFt -> Way.between(lengthFt, riseFt));
    }
    for (JobField field : List.of(JobField.LENGTH, JobField.RISE)) {
      if (answers.given(field)) {
        problems.add(
            new Problem(
                field.word(), answers.text(field), "left out with route, which says it", ""));
      }
    }
    double behindFt =
        answers.given(JobField.ATTACK_LINES) ? answers.of(JobField.ATTACK_LENGTH).orElse(0.0) : 0;
    Optional<Route> route = answers.of(JobField.ROUTE);
    if (route.filter(way -> way.lengthFt() <= behindFt).isPresent()) {
      problems.add(
          new Problem(
              JobField.ATTACK_LENGTH.word(),
              answers.text(JobField.ATTACK_LENGTH),
              "less than the route is long, which goes from the source to the nozzles",
              ""));
      return Optional.empty();
    }
    return route.map(way -> Way.along(way, behindFt));
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
