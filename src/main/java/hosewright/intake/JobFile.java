package hosewright.intake;

import hosewright.disk.WholeFile;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A job as a YAML file: one answer a line, under the same words as the command's options.
 *
 * <p>Values are taken as they are written, so {@code 2.5} stays a size and {@code 2026-11-25} a
 * day.
 */
public final class JobFile {
  /** No job needs more; a larger file is something else. */
  private static final int MOST_KIB = 64;

  private static final int DEEPEST = 4;
  private static final String SUFFIX = ".yaml";

  /** What may stand in a job file besides the answers of a job. */
  private static final List<String> BESIDES =
      Stream.concat(Stream.of(LegList.WORD), PartsList.WORDS.stream()).toList();

  private JobFile() {}

  /** A job file as it was read, with its text. */
  public record Read(LayoutText layout, String text) {

    /**
     * The answers of a file of one line.
     *
     * @throws BadInputException when the file lists legs
     */
    public Map<JobField, String> answers() {
      return oneLine(layout);
    }
  }

  /**
   * The answers in a file.
   *
   * @throws BadInputException when the file cannot be read, is not YAML or has unknown words
   */
  public static Read read(Path file) {
    String text = SmallFile.named("job", file, "a job file", MOST_KIB, JobFile::beside);
    Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
    return new Read(withRoutes(layout(text), folder), text);
  }

  private static LayoutText withRoutes(LayoutText layout, Optional<Path> folder) {
    return new LayoutText(
        RouteFile.putInto(layout.answers(), folder),
        layout.legs().stream()
            .map(leg -> leg.saying(RouteFile.putInto(leg.answers(), folder)))
            .toList(),
        layout.beside());
  }

  /**
   * The file that a job is kept in under a name, which may leave out what all are called.
   *
   * @throws java.nio.file.InvalidPathException where no file can be called so
   */
  public static Path named(String name) {
    return Path.of(name.endsWith(SUFFIX) ? name : name + SUFFIX);
  }

  /** The job file in the same folder that was probably meant. */
  private static String beside(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Path name = file.getFileName();
    if (folder == null || name == null) {
      return "";
    }
    try (Stream<Path> there = Files.list(folder)) {
      String meant =
          Nearest.to(
              name.toString(),
              there
                  .map(one -> one.getFileName().toString())
                  .filter(one -> one.endsWith(SUFFIX))
                  .toList());
      return meant.isEmpty() ? "" : file.resolveSibling(meant).toString();
    } catch (IOException e) {
      return "";
    }
  }

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
    Node root;
    try {
      root = YamlText.root(text, "job file", DEEPEST);
    } catch (MarkedYAMLException e) {
      int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
      throw notYaml("line " + line, String.valueOf(e.getProblem()));
    } catch (YAMLException e) {
      throw notYaml("the text", "it holds something that is not plain text");
    }
    if (!(root instanceof MappingNode mapping)) {
      throw notYaml("line 1", "a job file has lines such as 'length: 400 ft'");
    }
    List<Problem> problems = new ArrayList<>();
    LegList legs = new LegList(problems);
    PartsList parts = new PartsList(problems);
    Map<JobField, String> answers = new TreeMap<>();
    for (NodeTuple entry : mapping.getValue()) {
      String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
      if (word.equals(LegList.WORD)) {
        legs.read(entry.getValueNode());
      } else if (PartsList.WORDS.contains(word)) {
        parts.read(word, entry);
      } else {
        answer(entry, answers, BESIDES, problems);
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new LayoutText(answers, legs.legs(), parts.beside());
  }

  /**
   * Reads one line of a job file.
   *
   * @param besides words that may stand there as well
   */
  static void answer(
      NodeTuple entry,
      Map<JobField, String> answers,
      List<String> besides,
      List<Problem> problems) {
    String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    int line = entry.getKeyNode().getStartMark().getLine() + 1;
    JobField.of(word)
        .ifPresentOrElse(
            field -> {
              if (answers.put(field, value(entry.getValueNode(), field, problems)) != null) {
                problems.add(Problem.of("job file line " + line, word, "a field stands only once"));
              }
            },
            () -> {
              List<String> words =
                  Stream.concat(besides.stream(), JobField.words().stream()).toList();
              problems.add(
                  new Problem(
                      "job file line " + line,
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

  private static BadInputException notYaml(String where, String why) {
    return new BadInputException("job file", where, "YAML as in 'length: 400 ft' (" + why + ")");
  }

  /** The text of a job file that says these answers. */
  public static String write(Map<JobField, String> answers) {
    return write(new LayoutText(answers, List.of()));
  }

  /** The text of a job file that says these answers and lists these legs. */
  public static String write(LayoutText layout) {
    StringBuilder text = new StringBuilder("# A Hosewright job.\n");
    new TreeMap<>(layout.answers()).forEach((field, answer) -> answered(text, "", field, answer));
    if (!layout.legs().isEmpty()) {
      text.append(LegList.WORD).append(":\n");
      layout.legs().forEach(leg -> LegList.write(leg, text));
    }
    PartsList.write(layout.beside(), text);
    return text.toString();
  }

  static void answered(StringBuilder text, String indent, JobField field, String answer) {
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

  /**
   * Writes a new job file.
   *
   * @throws BadInputException when the file is there already or cannot be written
   */
  public static void save(Path file, Map<JobField, String> answers) {
    WholeFile.refuseLink("job", file);
    try {
      Files.writeString(
          file, write(answers), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException e) {
      throw new BadInputException(
          "job", file.toString(), "a file that is not there yet: give another name");
    } catch (IOException e) {
      throw new BadInputException(
          "job", file.toString(), "a file in a folder that can be written to");
    }
  }

  /** Writes answers that may still grow, in place of those kept there before. */
  public static void keep(Path file, Map<JobField, String> answers) {
    try {
      WholeFile.put(file, write(answers), false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Removes answers that were kept and are no longer needed. */
  public static void forget(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Quoted only where plain YAML would read something else. */
  static String quoted(String answer) {
    boolean plain = answer.matches("[A-Za-z0-9][A-Za-z0-9 .,;%/½¼¾⅛-]*[A-Za-z0-9%½¼¾]|[A-Za-z0-9]");
    return plain ? answer : "\"" + answer.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
