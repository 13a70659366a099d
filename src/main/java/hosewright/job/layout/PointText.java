package hosewright.job.layout;

import hosewright.job.question.JobField;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A place where legs meet, as it was written down.
 *
 * @param name what legs call it
 * @param words what is said of it, text by word
 */
public record PointText(String name, Map<String, String> words) {
  /** What is said of an appliance that several legs end at. */
  static final List<JobField> OF_AN_APPLIANCE =
      List.of(JobField.TO, JobField.FLOW, JobField.NEED, JobField.TIP, JobField.ACCESSORIES);

  /** What may be said of a point. */
  public static final List<String> WORDS =
      Stream.concat(PumpForm.WORDS.stream(), OF_AN_APPLIANCE.stream().map(JobField::word)).toList();

  public PointText {
    words = Map.copyOf(words);
  }
}
