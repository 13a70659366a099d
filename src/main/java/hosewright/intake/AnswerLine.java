package hosewright.intake;

import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** One answer in a job file, as it is read and written: a line, or a list below its word. */
final class AnswerLine {
  private AnswerLine() {}

  /** Where it stands, for whoever is told what is wrong with it. */
  static String place(Node node) {
    return "job file line " + (node.getStartMark().getLine() + 1);
  }

  /**
   * Reads one line of a job file.
   *
   * @param besides words that may stand there as well
   */
  static void read(
      NodeTuple entry,
      Map<JobField, String> answers,
      List<String> besides,
      List<Problem> problems) {
    String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    String place = place(entry.getKeyNode());
    JobField.of(word)
        .ifPresentOrElse(
            field -> {
              if (answers.put(field, value(entry.getValueNode(), field, problems)) != null) {
                problems.add(Problem.of(place, word, "a field stands only once"));
              }
            },
            () -> {
              List<String> words =
                  Stream.concat(besides.stream(), JobField.words().stream()).toList();
              problems.add(
                  new Problem(
                      place,
                      word,
                      "a field such as " + String.join(", ", words),
                      Nearest.to(word, words)));
            });
  }

  /** A plain value as written, or a list joined as its field parts it. */
  static String value(Node node, JobField field, List<Problem> problems) {
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue();
    }
    if (node instanceof SequenceNode list
        && list.getValue().stream().allMatch(ScalarNode.class::isInstance)) {
      return String.join(
          field.equals(JobField.ROUTE) ? "; " : ", ",
          list.getValue().stream().map(item -> ((ScalarNode) item).getValue()).toList());
    }
    problems.add(new Problem(field.word(), "{...}", "one value on the line", field.example()));
    return "";
  }

  static void write(StringBuilder text, String indent, JobField field, String answer) {
    if (!field.equals(JobField.ROUTE) || !Route.listedIn(answer)) {
      line(text, indent, field.word(), answer);
      return;
    }
    text.append(indent).append(field.word()).append(":\n");
    for (String place : answer.split(";")) {
      text.append(indent).append("  - ").append(quoted(place.strip())).append('\n');
    }
  }

  static void line(StringBuilder text, String indent, String word, String answer) {
    text.append(indent).append(word).append(": ").append(quoted(answer)).append('\n');
  }

  /** A list below its word. */
  static void list(StringBuilder text, String indent, String word, List<String> values) {
    text.append(indent).append(word).append(":\n");
    values.forEach(value -> text.append(indent).append("  - ").append(quoted(value)).append('\n'));
  }

  /** Quoted only where plain YAML would read something else. */
  static String quoted(String answer) {
    boolean plain = answer.matches("[A-Za-z0-9][A-Za-z0-9 .,;%/½¼¾⅛-]*[A-Za-z0-9%½¼¾]|[A-Za-z0-9]");
    return plain ? answer : "\"" + answer.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
