package hosewright.intake;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A YAML text whose every problem says its line; values are taken as they are written. */
record YamlTree(Node node, String title, List<Problem> problems) {
  private static final int DEEPEST = 8;

  static YamlTree of(String text, String title, List<Problem> problems) {
    try {
      return new YamlTree(YamlText.root(text, title, DEEPEST), title, problems);
    } catch (MarkedYAMLException e) {
      int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
      throw new BadInputException(
          title + " line " + line, String.valueOf(e.getProblem()), "YAML as in 'number: Part No.'");
    } catch (YAMLException e) {
      throw new BadInputException(title, "something that is not plain text", "YAML");
    }
  }

  boolean isMapping() {
    return node instanceof MappingNode;
  }

  /** The entries of a mapping; a word that is not allowed is noted and left out. */
  Map<String, YamlTree> entries(List<String> allowed) {
    Map<String, YamlTree> entries = new LinkedHashMap<>();
    all()
        .forEach(
            (word, value) -> {
              if (allowed.contains(word)) {
                entries.put(word, value);
              } else {
                value.refuse(
                    word, "one of " + String.join(", ", allowed), Nearest.to(word, allowed));
              }
            });
    return entries;
  }

  /** The entries of a mapping under any words. */
  Map<String, YamlTree> all() {
    Map<String, YamlTree> entries = new LinkedHashMap<>();
    if (!(node instanceof MappingNode mapping)) {
      refuse(shown(), "lines of 'word: value' below it", "");
      return entries;
    }
    for (NodeTuple entry : mapping.getValue()) {
      if (entry.getKeyNode() instanceof ScalarNode key) {
        entries.put(key.getValue(), new YamlTree(entry.getValueNode(), title, problems));
      } else {
        refuse("{...}", "one word before each colon", "");
      }
    }
    return entries;
  }

  /** One plain value; empty and noted when it is none. */
  Optional<String> text() {
    if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
      return Optional.of(scalar.getValue());
    }
    refuse(shown(), "one value on the line", "");
    return Optional.empty();
  }

  /** One plain value, or several in brackets. */
  List<String> texts() {
    if (node instanceof SequenceNode list) {
      return list.getValue().stream()
          .flatMap(part -> new YamlTree(part, title, problems).text().stream())
          .toList();
    }
    return text().stream().toList();
  }

  String shown() {
    return node instanceof ScalarNode scalar ? scalar.getValue() : node == null ? "" : "{...}";
  }

  void refuse(String value, String allowed, String nearest) {
    int line = node == null ? 1 : node.getStartMark().getLine() + 1;
    problems.add(new Problem(title + " line " + line, value, allowed, nearest));
  }
}
