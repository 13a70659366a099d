package hosewright.intake;

import hosewright.job.layout.PointText;
import hosewright.job.layout.PumpForm;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The points that a job file lists: places where legs meet that have facts of their own. */
final class PointList {
  /** Points stand under it. */
  static final String WORD = "points";

  private static final String NAME = "point";

  private final List<PointText> points = new ArrayList<>();
  private final List<Problem> problems;

  PointList(List<Problem> problems) {
    this.problems = problems;
  }

  List<PointText> points() {
    return points;
  }

  void read(Node node) {
    if (!(node instanceof SequenceNode list) || list.getValue().isEmpty()) {
      problems.add(Problem.of(WORD, "", "a list of points, each beginning '- point: NAME'"));
      return;
    }
    list.getValue().forEach(this::point);
  }

  private void point(Node node) {
    if (!(node instanceof MappingNode mapping)) {
      problems.add(
          Problem.of(
              AnswerLine.place(node), "", "a point such as '- point: pump 2' with its facts"));
      return;
    }
    Map<String, String> said = new LinkedHashMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      word(entry, said);
    }
    String name = said.getOrDefault(NAME, "").strip();
    if (name.isEmpty()) {
      problems.add(Problem.of(AnswerLine.place(node), "", "a name for the point: 'point: pump 2'"));
    }
    said.remove(NAME);
    points.add(new PointText(name, said));
  }

  private void word(NodeTuple entry, Map<String, String> said) {
    String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    String place = AnswerLine.place(entry.getKeyNode());
    if (!word.equals(NAME) && !PumpForm.WORDS.contains(word)) {
      problems.add(
          new Problem(
              place,
              word,
              "a word such as " + NAME + ", " + String.join(", ", PumpForm.WORDS),
              Nearest.to(word, PumpForm.WORDS)));
    } else if (!(entry.getValueNode() instanceof ScalarNode value)) {
      problems.add(Problem.of(place, word, "one value on the line"));
    } else if (said.put(word, value.getValue()) != null) {
      problems.add(Problem.of(place, word, "said once of each point"));
    }
  }

  static void write(PointText point, StringBuilder text) {
    AnswerLine.line(text, "  - ", NAME, point.name());
    new TreeMap<>(point.words()).forEach((word, said) -> AnswerLine.line(text, "    ", word, said));
  }
}
