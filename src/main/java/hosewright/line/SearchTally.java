package hosewright.line;

import java.util.Map;
import java.util.TreeMap;

/** Counts what a search looked at, to explain it. */
final class SearchTally {
  int topologies;
  int unjoined;
  int cutByPrice;
  int cutByPressure;
  int plans;
  int dearer;
  int passed;

  /** Whole plans that failed, by the first check that did. */
  final Map<String, Integer> failed = new TreeMap<>();

  void countChecked(Evaluated plan) {
    plan.mendableFailures().stream()
        .findFirst()
        .ifPresentOrElse(id -> failed.merge(id.displayName(), 1, Integer::sum), () -> passed++);
  }

  LinePlan.Searched searched() {
    return new LinePlan.Searched(topologies, cutByPrice, cutByPressure, plans);
  }
}
