package hosewright.job.question;

import java.util.List;
import java.util.Map;

/** What a plan takes for granted where an answer was left open. */
public final class Assumptions {
  private Assumptions() {}

  /** In plain words, one each. */
  public static List<String> of(Map<JobField, String> answers) {
    return JobField.values().stream()
        .filter(field -> !answers.containsKey(field))
        .map(JobField::whenOpen)
        .filter(open -> open.applies().test(answers))
        .map(WhenOpen::assumption)
        .filter(assumption -> !assumption.isEmpty())
        .toList();
  }
}
