package hosewright.intake;

import hosewright.job.layout.PartsBeside;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The parts and kits that a job file wants besides its line: one a line, or a list of them. */
final class PartsList {
  private static final String PARTS = "parts";
  private static final String KIT = "kit";

  /** What they stand under. */
  static final List<String> WORDS = List.of(PARTS, KIT);

  private final List<String> parts = new ArrayList<>();
  private final List<String> kits = new ArrayList<>();
  private final List<Problem> problems;

  PartsList(List<Problem> problems) {
    this.problems = problems;
  }

  PartsBeside beside() {
    return new PartsBeside(parts, kits);
  }

  void read(String word, NodeTuple entry) {
    List<String> into = word.equals(KIT) ? kits : parts;
    if (!into.isEmpty()) {
      problem(entry.getKeyNode(), word, "a word that stands only once");
    } else if (entry.getValueNode() instanceof SequenceNode list && !list.getValue().isEmpty()) {
      list.getValue().forEach(one -> line(word, one, into));
    } else {
      line(word, entry.getValueNode(), into);
    }
  }

  private void line(String word, Node node, List<String> into) {
    if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
      into.add(scalar.getValue().strip());
    } else {
      problem(
          node, word, word.equals(KIT) ? "the name of a kit" : "parts such as '2 x W-SPAN-15-3'");
    }
  }

  private void problem(Node node, String value, String allowed) {
    problems.add(Problem.of(AnswerLine.place(node), value, allowed));
  }

  static void write(PartsBeside beside, StringBuilder text) {
    write(PARTS, beside.parts(), text);
    write(KIT, beside.kits(), text);
  }

  private static void write(String word, List<String> lines, StringBuilder text) {
    if (!lines.isEmpty()) {
      text.append(word).append(":\n");
      lines.forEach(line -> text.append("  - ").append(AnswerLine.quoted(line)).append('\n'));
    }
  }
}
