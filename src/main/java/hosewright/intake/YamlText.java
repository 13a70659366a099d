package hosewright.intake;

import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A YAML text as its tree of values, none of which has characters that may not be kept. */
final class YamlText {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final String title;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private YamlText(String title) {
    this.title = title;
  }

  /**
   * The tree, null of an empty text.
   *
   * @param title what the user knows the text by; problems begin with it
   * @param deepest how deep its parts may lie in one another
   * @throws BadInputException naming every line with characters that may not be kept
   * @throws org.yaml.snakeyaml.error.YAMLException when it is no YAML
   */
  static Node root(String text, String title, int deepest) {
    YamlText read = new YamlText(title);
    read.requirePlainLines(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    LoaderOptions options = new LoaderOptions();
    options.setAllowDuplicateKeys(false);
    options.setMaxAliasesForCollections(0);
    options.setNestingDepthLimit(deepest);
    Node root = new Yaml(new SafeConstructor(options)).compose(new StringReader(text));
    read.requirePlainValues(root);
    read.throwAny();
    return root;
  }

  /**
   * A tree of lines that each say something under a word.
   *
   * @param title what the user knows the text by
   * @param example such a line
   * @throws BadInputException when it is no such tree, or naming every line with characters that
   *     may not be kept
   */
  static MappingNode lines(String text, String title, String example, int deepest) {
    Node root;
    try {
      root = root(text, title, deepest);
    } catch (MarkedYAMLException e) {
      int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
      throw noLines(title, "line " + line, example, String.valueOf(e.getProblem()));
    } catch (YAMLException e) {
      throw noLines(title, "the text", example, "it holds something that is not plain text");
    }
    if (root instanceof MappingNode mapping) {
      return mapping;
    }
    String lines = "a %s has lines such as '%s'".formatted(title, example);
    throw noLines(title, "line 1", example, lines);
  }

  private static BadInputException noLines(String title, String where, String example, String why) {
    return new BadInputException(title, where, "YAML as in '%s' (%s)".formatted(example, why));
  }

  /** Comments are kept with a job too. */
  private void requirePlainLines(String text) {
    if (PlainText.is(text)) {
      return;
    }
    int number = 1;
    for (String line : text.split("\n", -1)) {
      if (!PlainText.is(line + "\n")) {
        PlainText.refusal(title + " line " + number, line).ifPresent(problems::add);
      }
      number++;
    }
    throwAny();
  }

  /** Between double quotes any character can be written as an escape. */
  private void requirePlainValues(Node node) {
    if (node instanceof ScalarNode scalar) {
      int line = node.getStartMark().getLine() + 1;
      PlainText.refusal(title + " line " + line, scalar.getValue()).ifPresent(problems::add);
    } else if (node != null && seen.add(node)) {
      if (node instanceof SequenceNode list) {
        list.getValue().forEach(this::requirePlainValues);
      } else if (node instanceof MappingNode mapping) {
        mapping
            .getValue()
            .forEach(
                entry -> {
                  requirePlainValues(entry.getKeyNode());
                  requirePlainValues(entry.getValueNode());
                });
      }
    }
  }

  private void throwAny() {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
