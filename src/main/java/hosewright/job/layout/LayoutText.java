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
 * @param points where legs meet at something that has facts of its own
 * @param beside parts and kits wanted besides what is laid
 */
public record LayoutText(
    Map<JobField, String> answers, List<LegText> legs, List<PointText> points, PartsBeside beside) {
  public LayoutText {
    answers = Map.copyOf(answers);
    legs = List.copyOf(legs);
    points = List.copyOf(points);
  }

  /** With nothing wanted besides what is laid. */
  public LayoutText(Map<JobField, String> answers, List<LegText> legs) {
    this(answers, legs, List.of(), PartsBeside.NONE);
  }

  /** One line, with nothing wanted besides it. */
  public static LayoutText oneLine(Map<JobField, String> answers) {
    return new LayoutText(answers, List.of());
  }

  /** With other answers for all legs. */
  public LayoutText saying(Map<JobField, String> other) {
    return new LayoutText(other, legs, points, beside);
  }

  /** With other parts besides what is laid. */
  public LayoutText with(PartsBeside other) {
    return new LayoutText(answers, legs, points, other);
  }

  /** Whether it asks for parts and for no line. */
  public boolean isPartsAlone() {
    return !beside.isEmpty() && legs.isEmpty() && !answers.containsKey(JobField.FROM);
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
      leg.points().begins().ifPresent(point -> words.put(in(leg, "begins"), point));
      leg.points().ends().ifPresent(point -> words.put(in(leg, "ends"), point));
      new TreeMap<>(leg.points().pump()).forEach((word, said) -> words.put(in(leg, word), said));
      new TreeMap<>(leg.answers())
          .forEach((field, answer) -> words.put(in(leg, field.word()), answer));
    }
    for (PointText point : points) {
      new TreeMap<>(point.words())
          .forEach((word, said) -> words.put("point " + point.name() + ": " + word, said));
    }
    if (!beside.parts().isEmpty()) {
      words.put("parts", String.join("; ", beside.parts()));
    }
    if (!beside.kits().isEmpty()) {
      words.put("kit", String.join(", ", beside.kits()));
    }
    return words;
  }

  private static String in(LegText leg, String word) {
    return "leg " + leg.name() + ": " + word;
  }
}
