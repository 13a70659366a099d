package hosewright.job.layout;

import hosewright.job.question.JobField;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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

  /** With other answers for all legs. */
  public LayoutText saying(Map<JobField, String> other) {
    return new LayoutText(other, legs);
  }

  /** Every answer by the words it is known by, those of a leg with its name. */
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    new TreeMap<>(answers).forEach((field, answer) -> words.put(field.word(), answer));
    for (LegText leg : legs) {
      leg.behind().ifPresent(name -> words.put(in(leg, "behind"), name));
      if (!leg.copies().isBlank()) {
        words.put(in(leg, "copies"), leg.copies());
      }
      new TreeMap<>(leg.answers())
          .forEach((field, answer) -> words.put(in(leg, field.word()), answer));
    }
    return words;
  }

  private static String in(LegText leg, String word) {
    return "leg " + leg.name() + ": " + word;
  }
}
