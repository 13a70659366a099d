package hosewright.line;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The figures of a plan that stand in its cautions, by the words in braces they replace. */
final class CautionFigures {
  private final Map<String, String> figures = new LinkedHashMap<>();

  CautionFigures(Job job, Evaluated plan, List<Check> checks) {
    Hydraulics hydraulics = plan.hydraulics();
    figures.put("{near}", String.join(", ", NearLimits.of(job, checks)));
    figures.put("{water}", Checks.text("%.0f gal", waterGal(job, plan)));
    figures.put("{surge}", Checks.text("%.0f psi", hydraulics.surgeHighPsi()));
    figures.put("{reaction}", Checks.text("%.0f lbf", hydraulics.reactionLbf().orElse(0.0)));
    double workingPsi = workingPsi(job, plan).orElse(0);
    double ratio =
        workingPsi <= Limit.DESIGN_RATIO_PSI.value()
            ? Limit.DESIGN_RATIO_LOW.value()
            : Limit.DESIGN_RATIO_HIGH.value();
    figures.put("{working}", Checks.text("%.0f psi", workingPsi));
    figures.put("{ratio}", Checks.text("%.0f", ratio));
    figures.put("{burst}", Checks.text("%.0f psi", workingPsi * ratio));
  }

  /** Water in the line from the source to the appliance, or to every one behind a wye. */
  private static double waterGal(Job job, Evaluated plan) {
    List<LegFigures> legs = LegFigures.of(job, plan.assembly());
    return legs.get(0).waterGal()
        + legs.stream().skip(1).mapToDouble(LegFigures::allWaterGal).sum();
  }

  /** Whether the hose carries a working pressure at all. */
  static boolean rated(Job job, Evaluated plan) {
    return workingPsi(job, plan).orElse(0) > 0;
  }

  private static OptionalDouble workingPsi(Job job, Evaluated plan) {
    return plan.assembly().hoseWorkingPsi(job.service().temperatureOrUsualF());
  }

  String putInto(String sentence) {
    String whole = sentence;
    for (Map.Entry<String, String> figure : figures.entrySet()) {
      whole = whole.replace(figure.getKey(), figure.getValue());
    }
    return whole;
  }
}
