package hosewright.job.layout;

import hosewright.hydraulics.suction.Drafting;
import hosewright.hydraulics.suction.Suction;
import hosewright.job.question.JobField;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a layout says of the open water that it draws from.
 *
 * @param liftFt height of the pump above the water, ft
 * @param altitudeFt height of the place above the sea, ft
 * @param waterF how warm the water is, °F
 */
record DraftText(double liftFt, double altitudeFt, double waterF) {
  private static final String OPEN_WATER = "open water";

  /** What feeds a line under pressure, which open water does not. */
  private static final List<JobField> OF_A_PRESSURE =
      List.of(
          JobField.STATIC,
          JobField.RESIDUAL,
          JobField.AT,
          JobField.HYDRANT_LOSS,
          JobField.PUMP_CURVE,
          JobField.SOURCE_PRESSURE);

  private static final double COLDEST_F = 32;
  private static final double WARMEST_F = 212;

  /** Whether water is drawn from below. */
  static boolean asked(Map<JobField, String> answers) {
    return answers.getOrDefault(JobField.FROM, "").strip().equalsIgnoreCase(OPEN_WATER);
  }

  /** Empty, with its problems told, where it cannot be read; empty where no water is drawn. */
  static Optional<DraftText> read(Map<JobField, String> answers, List<Problem> problems) {
    if (!asked(answers)) {
      return Optional.empty();
    }
    for (JobField field : OF_A_PRESSURE) {
      if (answers.containsKey(field)) {
        problems.add(
            Problem.of(
                field.word(),
                answers.get(field),
                "left out: open water gives no pressure; the pump that draws it is a point with a"
                    + " curve"));
      }
    }
    if (!answers.containsKey(JobField.LIFT)) {
      problems.add(
          new Problem(
              JobField.LIFT.word(),
              "",
              "give " + JobField.LIFT.meaning(),
              JobField.LIFT.example()));
      return Optional.empty();
    }
    try {
      double altitudeFt =
          Optional.ofNullable(answers.get(JobField.ALTITUDE))
              .map(text -> Measures.altitudeFt(JobField.ALTITUDE.word(), text))
              .orElse(0.0);
      double waterF =
          Optional.ofNullable(answers.get(JobField.TEMPERATURE))
              .map(text -> Measures.temperatureF(JobField.TEMPERATURE.word(), text))
              .orElse(Suction.USUAL_WATER_F);
      double drawnF = Math.min(Math.max(waterF, COLDEST_F), WARMEST_F);
      double liftFt =
          Suction.checkedLiftFt(
              JobField.LIFT.word(),
              Measures.lengthFt(JobField.LIFT.word(), answers.get(JobField.LIFT)),
              altitudeFt,
              drawnF);
      return Optional.of(new DraftText(liftFt, altitudeFt, drawnF));
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  Drafting by(OptionalDouble npshRequiredFt) {
    return new Drafting(liftFt, altitudeFt, waterF, npshRequiredFt);
  }
}
