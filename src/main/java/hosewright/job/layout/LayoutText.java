package hosewright.job.layout;

import hosewright.job.question.JobField;
import java.util.List;
import java.util.Map;

/**
 * A layout as it was written down.
 *
 * @param answers what holds for all legs, text by field
 * @param legs in the order written; none for a job of one line
 */
public record LayoutText(Map<JobField, String> answers, List<LegText> legs) {
  public LayoutText {
    answers = Map.copyOf(answers);
    legs = List.copyOf(legs);
  }
}
