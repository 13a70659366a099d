package hosewright.line.plan;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.line.check.Checks;
import hosewright.line.check.NearLimits;
import hosewright.line.plan.PlanFacts.Planned;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What may stand in the braces of a caution: figures of its plan, and answers of its job. */
final class CautionFigures {
  private static final Map<String, String> UNITS =
      Map.of("LENGTH", "ft", "FLOW", "gpm", "PRESSURE", "psi", "TEMPERATURE", "°F", "WEIGHT", "lb");
  private static final String NEAR = "near limits";
  private static final String RATIO = "design ratio";

  private CautionFigures() {}

  static Set<String> names() {
    Set<String> names = new LinkedHashSet<>(PlanFacts.figures().keySet());
    names.add(NEAR);
    names.add(RATIO);
    names.addAll(JobField.words());
    return names;
  }

  /** A figure of a plan as it stands in a sentence, and so does an answer. */
  static String text(String name, Planned planned) {
    return switch (name) {
      case NEAR -> String.join(", ", NearLimits.of(planned.job(), planned.checks()));
      case RATIO ->
          Checks.text(
              "%.0f",
              PlanFacts.designRatio(
                  PlanFacts.figures().get("working pressure").of().apply(planned).orElse(0)));
      default ->
          PlanFacts.figures().containsKey(name)
              ? PlanFacts.figures().get(name).text(planned)
              : answer(JobField.of(name).orElseThrow(), planned.job().answers());
    };
  }

  /** A measure in the unit that all sentences have, to be restated with them. */
  private static String answer(JobField field, Answers answers) {
    String unit = UNITS.getOrDefault(field.placeholder(), "");
    return answers
        .value(field)
        .filter(value -> value instanceof Double && !unit.isEmpty())
        .map(
            value ->
                new BigDecimal(Checks.text("%.1f", value)).stripTrailingZeros().toPlainString()
                    + " "
                    + unit)
        .orElseGet(() -> answers.given(field) ? answers.text(field) : field.whenOpen().said());
  }
}
