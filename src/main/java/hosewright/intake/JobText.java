package hosewright.intake;

import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * A job as YAML: one answer a line, under the same words as the command's options, then its legs
 * and the parts besides.
 *
 * <p>Values are taken as they are written, so {@code 2.5} stays a size and {@code 2026-11-25} a
 * day.
 */
public final class JobText {
  private static final int DEEPEST = 4;

  /** What may stand in a job file besides the answers of a job. */
  private static final List<String> BESIDES =
      Stream.concat(Stream.of(LegList.WORD, PointList.WORD), PartsList.WORDS.stream()).toList();

  private JobText() {}

  /**
   * The answers in the text of a job file.
   *
   * @throws BadInputException when it lists legs
   */
  public static Map<JobField, String> parse(String text) {
    return oneLine(layout(text));
  }

  /**
   * The answers of a job of one line.
   *
   * @throws BadInputException when legs are listed
   */
  public static Map<JobField, String> oneLine(LayoutText layout) {
    if (!layout.legs().isEmpty()) {
      throw new BadInputException(
          LegList.WORD,
          layout.legs().size() + " legs",
          "left out: one line is asked about here; line plan and quote make take legs");
    }
    return new TreeMap<>(layout.answers());
  }

  /**
   * The answers and legs of a job that a quote keeps: one of an older version may hold marks that
   * no door lets in any more, and must not be lost over them.
   */
  public static LayoutText kept(String text) {
    return layout(PlainText.without(text));
  }

  /** The answers and legs in the text of a job file. */
  public static LayoutText layout(String text) {
    List<Problem> problems = new ArrayList<>();
    LegList legs = new LegList(problems);
    PointList points = new PointList(problems);
    PartsList parts = new PartsList(problems);
    Map<JobField, String> answers = new TreeMap<>();
    for (NodeTuple entry : YamlText.lines(text, "job file", "length: 400 ft", DEEPEST).getValue()) {
      String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
      if (word.equals(LegList.WORD)) {
        legs.read(entry.getValueNode());
      } else if (word.equals(PointList.WORD)) {
        points.read(entry.getValueNode());
      } else if (PartsList.WORDS.contains(word)) {
        parts.read(word, entry);
      } else {
        AnswerLine.read(entry, answers, BESIDES, problems);
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new LayoutText(answers, legs.legs(), points.points(), parts.beside());
  }

  /** The text of a job file that says these answers. */
  public static String write(Map<JobField, String> answers) {
    return write(LayoutText.oneLine(answers));
  }

  /** The text of a job file that says these answers and lists these legs. */
  public static String write(LayoutText layout) {
    StringBuilder text = new StringBuilder("# A Hosewright job.\n");
    new TreeMap<>(layout.answers())
        .forEach((field, answer) -> AnswerLine.write(text, "", field, answer));
    if (!layout.points().isEmpty()) {
      text.append(PointList.WORD).append(":\n");
      layout.points().forEach(point -> PointList.write(point, text));
    }
    if (!layout.legs().isEmpty()) {
      text.append(LegList.WORD).append(":\n");
      layout.legs().forEach(leg -> LegList.write(leg, text));
    }
    PartsList.write(layout.beside(), text);
    return text.toString();
  }
}
