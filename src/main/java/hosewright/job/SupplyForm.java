package hosewright.job;

import static hosewright.job.question.JobField.AT;
import static hosewright.job.question.JobField.HYDRANT_LOSS;
import static hosewright.job.question.JobField.PUMP_CURVE;
import static hosewright.job.question.JobField.RESIDUAL;
import static hosewright.job.question.JobField.SOURCE_PRESSURE;
import static hosewright.job.question.JobField.STATIC;

import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what the source gives: a fixed pressure, a hydrant test or a pump curve, but one only. */
final class SupplyForm {
  private final Answers answers;
  private final List<Problem> problems;

  SupplyForm(Answers answers, List<Problem> problems) {
    this.answers = answers;
    this.problems = problems;
  }

  Optional<Supply> supply() {
    boolean fixed = answers.given(SOURCE_PRESSURE);
    boolean hydrant = Stream.of(STATIC, RESIDUAL, AT, HYDRANT_LOSS).anyMatch(answers::given);
    boolean pump = answers.given(PUMP_CURVE);
    if (Stream.of(fixed, hydrant, pump).filter(given -> given).count() > 1) {
      problems.add(
          new Problem(
              SOURCE_PRESSURE.word(),
              answers.text(fixed ? SOURCE_PRESSURE : PUMP_CURVE),
              "a source is stated once: source-pressure, or static with residual and at, or"
                  + " pump-curve",
              ""));
      return Optional.empty();
    }
    try {
      if (fixed) {
        return answers.of(SOURCE_PRESSURE).map(FixedPressure::new);
      }
      return pump ? answers.of(PUMP_CURVE).map(PumpCurve::new) : hydrant ? hydrant() : none();
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return none();
    }
  }

  private static Optional<Supply> none() {
    return Optional.empty();
  }

  private Optional<Supply> hydrant() {
    for (JobField field : List.of(STATIC, RESIDUAL, AT)) {
      if (!answers.given(field)) {
        problems.add(
            new Problem(
                field.word(),
                "",
                "a hydrant is stated by static, residual and at together",
                field.example()));
      }
    }
    if (Stream.of(STATIC, RESIDUAL, AT).anyMatch(field -> answers.said(field).isEmpty())) {
      return none();
    }
    return Optional.of(
        new Hydrant(
            answers.said(STATIC).orElseThrow(),
            answers.said(RESIDUAL).orElseThrow(),
            answers.said(AT).orElseThrow(),
            answers.said(HYDRANT_LOSS).orElse(0.0)));
  }
}
