package hosewright.line;

import hosewright.line.PlanFacts.Planned;
import java.util.LinkedHashSet;
import java.util.Set;

/** What may stand in the braces of a caution: figures of its plan, and answers of its job. */
final class CautionFigures {
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

  /** A figure of a plan as it stands in a sentence, an answer as it was typed. */
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
              : planned.job().answers().text(JobField.of(name).orElseThrow());
    };
  }
}
