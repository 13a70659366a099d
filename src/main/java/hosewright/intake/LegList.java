package hosewright.intake;

import hosewright.job.layout.LegPoints;
import hosewright.job.layout.LegText;
import hosewright.job.layout.PumpForm;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** The legs that a job file lists: each a name, where it begins, and answers of its own. */
final class LegList {
  /** Legs stand under it. */
  static final String WORD = "legs";

  private static final String NAME = "leg";
  private static final String BEHIND = "behind";
  private static final String COPIES = "copies";

  /** Goods for the end of a leg: another word for what is asked for besides it. */
  private static final String BUY = "buy";

  private static final String BEGINS = "begins";
  private static final String ENDS = "ends";

  private static final List<String> WORDS =
      Stream.concat(Stream.of(NAME, BEHIND, BEGINS, ENDS, COPIES, BUY), PumpForm.OF_A_LEG.stream())
          .toList();

  private final List<LegText> legs = new ArrayList<>();
  private final List<Problem> problems;

  LegList(List<Problem> problems) {
    this.problems = problems;
  }

  List<LegText> legs() {
    return legs;
  }

  void read(Node node) {
    if (!(node instanceof SequenceNode list) || list.getValue().isEmpty()) {
      problems.add(Problem.of(WORD, "", "a list of legs, each beginning '- leg: NAME'"));
      return;
    }
    list.getValue().forEach(this::leg);
  }

  private void leg(Node node) {
    if (!(node instanceof MappingNode mapping)) {
      problems.add(
          Problem.of(AnswerLine.place(node), "", "a leg such as '- leg: yard' with its answers"));
      return;
    }
    Map<String, String> said = new HashMap<>();
    Map<JobField, String> answers = new TreeMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
      if (!WORDS.contains(word)) {
        AnswerLine.read(entry, answers, WORDS, problems);
      } else if (said.put(word, text(entry.getValueNode(), word)) != null) {
        problems.add(
            Problem.of(AnswerLine.place(entry.getKeyNode()), word, "said once in each leg"));
      }
    }
    Optional.ofNullable(said.get(BUY))
        .ifPresent(
            buy -> answers.merge(JobField.ACCESSORIES, buy, (one, other) -> one + ", " + other));
    String name = said.getOrDefault(NAME, "").strip();
    if (name.isEmpty()) {
      problems.add(Problem.of(AnswerLine.place(node), "", "a name for the leg: 'leg: yard'"));
    }
    legs.add(
        new LegText(
            name,
            Optional.ofNullable(said.get(BEHIND)).map(String::strip),
            said.getOrDefault(COPIES, ""),
            answers,
            points(said)));
  }

  private static LegPoints points(Map<String, String> said) {
    Map<String, String> pump = new HashMap<>(said);
    pump.keySet().retainAll(PumpForm.OF_A_LEG);
    return new LegPoints(
        Optional.ofNullable(said.get(BEGINS)).map(String::strip),
        Optional.ofNullable(said.get(ENDS)).map(String::strip),
        pump);
  }

  private String text(Node node, String word) {
    if (word.equals(BUY)) {
      return AnswerLine.value(node, JobField.ACCESSORIES, problems);
    }
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue();
    }
    problems.add(
        Problem.of(
            AnswerLine.place(node),
            word,
            word.equals(BEHIND)
                ? "one leg: where legs join is not planned yet"
                : "one value on the line"));
    return "";
  }

  static void write(LegText leg, StringBuilder text) {
    AnswerLine.line(text, "  - ", NAME, leg.name());
    leg.behind().ifPresent(name -> AnswerLine.line(text, "    ", BEHIND, name));
    if (!leg.copies().isBlank()) {
      AnswerLine.line(text, "    ", COPIES, leg.copies());
    }
    leg.points().begins().ifPresent(point -> AnswerLine.line(text, "    ", BEGINS, point));
    leg.points().ends().ifPresent(point -> AnswerLine.line(text, "    ", ENDS, point));
    new TreeMap<>(leg.points().pump())
        .forEach((word, value) -> AnswerLine.line(text, "    ", word, value));
    new TreeMap<>(leg.answers())
        .forEach((field, answer) -> AnswerLine.write(text, "    ", field, answer));
  }
}
