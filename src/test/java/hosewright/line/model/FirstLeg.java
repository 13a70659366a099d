package hosewright.line.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The hose that starts at the source of a plan, which is all of it where nothing divides. */
public final class FirstLeg {
  private FirstLeg() {}

  public static Leg.Hose hose(LinePlan plan) {
    return leg(plan).hose().orElseThrow();
  }

  public static List<SectionCount> sections(LinePlan plan) {
    return leg(plan).sectionCounts();
  }

  public static int lines(LinePlan plan) {
    return leg(plan).lines();
  }

  /** What is not hose between the line's ends, as {@code 2 x ITEM}, over all lines. */
  public static List<String> fittings(LinePlan plan) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Leg leg : plan.layout().legs()) {
      leg.parts().stream()
          .filter(part -> part.role().isFitting())
          .forEach(part -> counts.merge(part.item().orElse(""), leg.lines(), Integer::sum));
    }
    return counts.entrySet().stream().map(e -> e.getValue() + " x " + e.getKey()).toList();
  }

  private static Leg leg(LinePlan plan) {
    return plan.layout().firstHoseLeg().orElseThrow();
  }
}
