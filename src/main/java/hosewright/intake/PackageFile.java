package hosewright.intake;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A purchase of several jobs as a YAML file: {@code jobs:}, {@code parts:} and {@code kit:}, under
 * a title. Job files are named from where the file lies.
 */
public final class PackageFile {
  private static final int MOST_KIB = 64;
  private static final int DEEPEST = 5;
  private static final int MOST_OF_A_GROUP = 9_999;
  private static final List<String> WORDS = List.of("title", "customer", "jobs", "parts", "kit");
  private static final List<String> ENTRY_WORDS =
      List.of("job", "parts", "kit", "title", "count", "optional");

  private final Path folder;
  private final List<Problem> problems = new ArrayList<>();

  private PackageFile(Path folder) {
    this.folder = folder;
  }

  /**
   * What a package file asks for.
   *
   * @param entries in the order written: jobs first, then parts and kits beside them
   */
  public record Read(Optional<String> title, Optional<String> customer, List<Entry> entries) {}

  /**
   * A job file, a list of parts, or a kit.
   *
   * @param title empty where none is given
   * @param job the job file; empty for parts
   * @param kits names of kits whose parts go into it
   */
  public record Entry(
      String title,
      int count,
      boolean optional,
      Optional<Path> job,
      List<String> parts,
      List<String> kits) {}

  /**
   * The purchase a file asks for.
   *
   * @throws BadInputException naming everything that cannot be used, by its line
   */
  public static Read read(Path file) {
    String text = SmallFile.named("package", file, "a package file", MOST_KIB);
    Path folder = file.toAbsolutePath().getParent();
    return new PackageFile(folder == null ? Path.of("") : folder).parse(text);
  }

  private Read parse(String text) {
    MappingNode root = YamlText.lines(text, "package file", "jobs:", DEEPEST);
    Map<String, Node> said = fields(root, WORDS);
    List<Entry> entries = new ArrayList<>();
    if (said.get("jobs") instanceof SequenceNode jobs) {
      jobs.getValue().forEach(entry -> entry(entry).ifPresent(entries::add));
    } else if (said.containsKey("jobs")) {
      problem(said.get("jobs"), "jobs", "a list, each with 'job: FILE'");
    }
    List<String> parts = texts(said, "parts");
    List<String> kits = texts(said, "kit");
    if (!parts.isEmpty() || !kits.isEmpty()) {
      entries.add(new Entry("", 1, false, Optional.empty(), parts, kits));
    }
    if (entries.isEmpty() && problems.isEmpty()) {
      problem(root, "", "jobs, parts or a kit: a group without lines is no group");
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Read(text(said, "title"), text(said, "customer"), entries);
  }

  private Optional<Entry> entry(Node node) {
    if (!(node instanceof MappingNode mapping)) {
      problem(node, "", "an entry such as 'job: hydrant-to-nozzle.yaml'");
      return Optional.empty();
    }
    Map<String, Node> said = fields(mapping, ENTRY_WORDS);
    Optional<Path> job = text(said, "job").map(folder::resolve);
    List<String> parts = texts(said, "parts");
    List<String> kits = texts(said, "kit");
    if (job.isEmpty() && parts.isEmpty() && kits.isEmpty()) {
      problem(node, "", "'job: FILE', or 'parts:' or 'kit:' with lines to sell");
    }
    return Optional.of(
        new Entry(text(said, "title").orElse(""), count(said), optional(said), job, parts, kits));
  }

  private int count(Map<String, Node> said) {
    String typed = text(said, "count").orElse("1");
    if (!typed.matches("[1-9]\\d{0,3}")) {
      problem(said.get("count"), typed, "a count from 1 to " + MOST_OF_A_GROUP);
      return 1;
    }
    return Integer.parseInt(typed);
  }

  private boolean optional(Map<String, Node> said) {
    String typed = text(said, "optional").orElse("no");
    if (!List.of("yes", "no", "true", "false").contains(typed)) {
      problem(said.get("optional"), typed, "yes or no");
    }
    return typed.equals("yes") || typed.equals("true");
  }

  private Map<String, Node> fields(MappingNode mapping, List<String> words) {
    Map<String, Node> fields = new LinkedHashMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
      if (!words.contains(word)) {
        problems.add(
            new Problem(
                place(entry.getKeyNode()),
                word,
                "one of " + String.join(", ", words),
                Nearest.to(word, words)));
      }
      fields.put(word, entry.getValueNode());
    }
    return fields;
  }

  private Optional<String> text(Map<String, Node> said, String word) {
    Node node = said.get(word);
    if (node == null) {
      return Optional.empty();
    }
    if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
      return Optional.of(scalar.getValue().strip());
    }
    problem(node, word, "one value on the line");
    return Optional.empty();
  }

  /** One value, or a list of them. */
  private List<String> texts(Map<String, Node> said, String word) {
    Node node = said.get(word);
    if (node instanceof SequenceNode list) {
      List<String> texts = new ArrayList<>();
      for (Node one : list.getValue()) {
        text(Map.of(word, one), word).ifPresent(texts::add);
      }
      if (texts.isEmpty()) {
        problem(node, word, "at least one line");
      }
      return texts;
    }
    return text(said, word).map(List::of).orElse(List.of());
  }

  private void problem(Node node, String value, String allowed) {
    problems.add(Problem.of(place(node), value, allowed));
  }

  private static String place(Node node) {
    return "package file line " + (node.getStartMark().getLine() + 1);
  }
}
