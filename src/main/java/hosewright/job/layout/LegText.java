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
 */
public record LegText(
    String name, Optional<String> behind, String copies, Map<JobField, String> answers) {
  public LegText {
    answers = Map.copyOf(answers);
  }

  /** With other answers. */
  public LegText saying(Map<JobField, String> other) {
    return new LegText(name, behind, copies, other);
  }
}
