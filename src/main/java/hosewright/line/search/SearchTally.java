package hosewright.line.search;

import hosewright.line.model.LinePlan;
import java.util.Map;
import java.util.TreeMap;

/** Counts what a search looked at, to explain it. */
public final class SearchTally {
  public int topologies;
  public int unjoined;
  public int cutByPrice;
  public int cutByPressure;
  public int plans;
  public int dearer;
  public int passed;

  /** Whole plans that failed, by the first check that did. */
  public final Map<String, Integer> failed = new TreeMap<>();

  void countChecked(Evaluated plan) {
    plan.mendableFailures().stream()
        .findFirst()
        .ifPresentOrElse(id -> failed.merge(id.displayName(), 1, Integer::sum), () -> passed++);
  }

  public LinePlan.Searched searched() {
    return new LinePlan.Searched(topologies, cutByPrice, cutByPressure, plans);
  }
}
