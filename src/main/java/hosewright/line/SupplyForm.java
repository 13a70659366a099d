package hosewright.line;

import static hosewright.line.JobField.*;

import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads what the source gives: a fixed pressure, a hydrant test or a pump curve, but one only. */
final class SupplyForm {
  private final Function<JobField, Optional<String>> answers;
  private final List<Problem> problems;

  SupplyForm(Function<JobField, Optional<String>> answers, List<Problem> problems) {
    this.answers = answers;
    this.problems = problems;
  }

  Optional<Supply> supply() {
    boolean fixed = given(SOURCE_PRESSURE);
    boolean hydrant = given(STATIC) || given(RESIDUAL) || given(AT) || given(HYDRANT_LOSS);
    boolean pump = given(PUMP_CURVE);
    if ((fixed ? 1 : 0) + (hydrant ? 1 : 0) + (pump ? 1 : 0) > 1) {
      problems.add(
          new Problem(
              SOURCE_PRESSURE.word(),
              answers.apply(fixed ? SOURCE_PRESSURE : PUMP_CURVE).orElse(""),
              "a source is stated once: source-pressure, or static with residual and at, or"
                  + " pump-curve",
              ""));
      return Optional.empty();
    }
    try {
      if (fixed) {
        return Optional.of(new FixedPressure(psi(SOURCE_PRESSURE)));
      }
      if (pump) {
        return Optional.of(pumpCurve());
      }
      return hydrant ? hydrant() : Optional.empty();
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private Optional<Supply> hydrant() {
    for (JobField field : List.of(STATIC, RESIDUAL, AT)) {
      if (!given(field)) {
        problems.add(
            new Problem(
                field.word(),
                "",
                "a hydrant is stated by static, residual and at together",
                field.example()));
      }
    }
    if (!given(STATIC) || !given(RESIDUAL) || !given(AT)) {
      return Optional.empty();
    }
    double lossPsi =
        answers
            .apply(HYDRANT_LOSS)
            .map(text -> Measures.lossPsi(HYDRANT_LOSS.word(), text))
            .orElse(0.0);
    double atFlowGpm = Measures.flowGpm(AT.word(), answers.apply(AT).orElseThrow());
    return Optional.of(new Hydrant(psi(STATIC), psi(RESIDUAL), atFlowGpm, lossPsi));
  }

  private PumpCurve pumpCurve() {
    List<PumpCurve.Point> points = new ArrayList<>();
    for (String point : answers.apply(PUMP_CURVE).orElseThrow().split(";")) {
      String[] sides = point.split("\\bat\\b");
      if (sides.length != 2) {
        throw JobForm.refusal(
            PUMP_CURVE.word(),
            point.strip(),
            "points such as '180 psi at 0 gpm', separated by semicolons",
            PUMP_CURVE.example());
      }
      double flowGpm = Measures.flowOrNoneGpm(PUMP_CURVE.word(), sides[1].strip());
      points.add(
          new PumpCurve.Point(flowGpm, Measures.lossPsi(PUMP_CURVE.word(), sides[0].strip())));
    }
    return new PumpCurve(points);
  }

  private boolean given(JobField field) {
    return answers.apply(field).isPresent();
  }

  private double psi(JobField field) {
    return Measures.pressurePsi(field.word(), answers.apply(field).orElseThrow());
  }
}
