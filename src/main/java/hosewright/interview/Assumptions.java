package hosewright.interview;

import hosewright.line.JobField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a plan takes for granted where an answer was left open. */
final class Assumptions {
  private static final Map<JobField, String> WHEN_OPEN = new LinkedHashMap<>();

  static {
    WHEN_OPEN.put(JobField.SLACK, "5 % more hose than the distance");
    WHEN_OPEN.put(JobField.RISE, "level ground");
    WHEN_OPEN.put(JobField.USE, "water that is neither for fire nor for drinking");
    WHEN_OPEN.put(JobField.FLUID, "plain water");
    WHEN_OPEN.put(JobField.TEMPERATURE, "water as warm as ratings are given for");
    WHEN_OPEN.put(JobField.SIZE, "any size of hose the catalogue has, the cheapest that works");
    WHEN_OPEN.put(JobField.CUSTOMER, "list prices");
    WHEN_OPEN.put(JobField.DATE, "the prices of today");
  }

  private Assumptions() {}

  /** In plain words, one each. */
  static List<String> of(Map<JobField, String> answers) {
    List<String> assumed =
        WHEN_OPEN.entrySet().stream()
            .filter(entry -> !answers.containsKey(entry.getKey()))
            .map(Map.Entry::getValue)
            .collect(Collectors.toCollection(ArrayList::new));
    boolean source =
        answers.containsKey(JobField.SOURCE_PRESSURE)
            || answers.containsKey(JobField.STATIC)
            || answers.containsKey(JobField.PUMP_CURVE);
    if (!source) {
      assumed.add("a source that gives what it takes");
    }
    return assumed;
  }
}
