package hosewright.job.layout;

import hosewright.job.question.JobField;
import java.util.Map;
import java.util.Optional;

/**
 * A leg as it was written down.
 *
 * @param name what the writer calls it
 * @param behind the leg where whose end it begins; empty where it begins at the source
 * @param copies how many like it there are, in words; empty for one
 * @param answers text by field; a field left out is left open
 * @param points the points it lies between, where it names any
 */
public record LegText(
    String name,
    Optional<String> behind,
    String copies,
    Map<JobField, String> answers,
    LegPoints points) {
  public LegText {
    answers = Map.copyOf(answers);
  }

  /** Between no points that have names. */
  public LegText(
      String name, Optional<String> behind, String copies, Map<JobField, String> answers) {
    this(name, behind, copies, answers, LegPoints.NONE);
  }

  /** Behind another leg. */
  LegText behind(String leg) {
    return new LegText(name, Optional.of(leg), copies, answers, points);
  }

  /** With other answers. */
  public LegText saying(Map<JobField, String> other) {
    return new LegText(name, behind, copies, other, points);
  }
}
