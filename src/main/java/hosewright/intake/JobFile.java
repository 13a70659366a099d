package hosewright.intake;

import hosewright.disk.WholeFile;
import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
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
  private static final int MOST_BYTES = 64 * 1024;

  private static final int DEEPEST = 4;

  private JobFile() {}

  /** The answers in a job file, with the text they were read from. */
  public record Read(Map<JobField, String> answers, String text) {}

  /**
   * The answers in a file.
   *
   * @throws BadInputException when the file cannot be read, is not YAML or has unknown words
   */
  public static Read read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw new BadInputException("job", file.toString(), "a job file, not a folder");
      }
      String text =
          SmallFile.text(file, MOST_BYTES)
              .orElseThrow(
                  () ->
                      new BadInputException(
                          "job", file.toString(), "a job file of at most 64 KiB"));
      Optional<Path> folder = Optional.ofNullable(file.toAbsolutePath().getParent());
      return new Read(RouteFile.putInto(parse(text), folder), text);
    } catch (CharacterCodingException e) {
      throw new BadInputException("job", file.toString(), "a job file in UTF-8");
    } catch (IOException e) {
      throw new BadInputException(
          List.of(
              new Problem(
                  "job", file.toString(), "a job file that is there to be read", beside(file))));
    }
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
                  .filter(one -> one.endsWith(".yaml"))
                  .toList());
      return meant.isEmpty() ? "" : file.resolveSibling(meant).toString();
    } catch (IOException e) {
      return "";
    }
  }

  /** The answers in the text of a job file. */
  public static Map<JobField, String> parse(String text) {
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
    return answers(mapping);
  }

  private static Map<JobField, String> answers(MappingNode mapping) {
    Map<JobField, String> answers = new TreeMap<>();
    List<Problem> problems = new ArrayList<>();
    for (NodeTuple entry : mapping.getValue()) {
      String word = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
      int line = entry.getKeyNode().getStartMark().getLine() + 1;
      JobField.of(word)
          .ifPresentOrElse(
              field -> {
                if (answers.put(field, value(entry.getValueNode(), field, problems)) != null) {
                  problems.add(
                      Problem.of("job file line " + line, word, "a field stands only once"));
                }
              },
              () ->
                  problems.add(
                      new Problem(
                          "job file line " + line,
                          word,
                          "a field such as " + String.join(", ", JobField.words()),
                          Nearest.to(word, JobField.words()))));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return answers;
  }

  /** A plain value as written, or a list joined as its field parts it. */
  private static String value(Node node, JobField field, List<Problem> problems) {
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
    StringBuilder text = new StringBuilder("# A Hosewright job.\n");
    answers.forEach(
        (field, answer) -> {
          text.append(field.word()).append(':');
          if (field.equals(JobField.ROUTE) && Route.listedIn(answer)) {
            for (String place : answer.split(";")) {
              text.append("\n  - ").append(quoted(place.strip()));
            }
          } else {
            text.append(' ').append(quoted(answer));
          }
          text.append('\n');
        });
    return text.toString();
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
  private static String quoted(String answer) {
    boolean plain = answer.matches("[A-Za-z0-9][A-Za-z0-9 .,;%/½¼¾⅛-]*[A-Za-z0-9%½¼¾]|[A-Za-z0-9]");
    return plain ? answer : "\"" + answer.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
