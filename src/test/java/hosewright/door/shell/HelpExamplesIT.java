package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.disk.OwnerOnly;
import hosewright.door.shell.run.OneDocument;
import hosewright.door.shell.run.RealProgram;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.json.JsonMapper;

/** What help shows as an example works as it stands, in prose and as JSON. */
final class HelpExamplesIT {
  /** Needs a database server; the tests of the store have one. */
  private static final Set<String> ELSEWHERE = Set.of("data move");

  @TempDir private Path temporary;
  private Path clone;
  private RealProgram program;

  @BeforeEach
  void stand_in_a_clone() throws IOException {
    clone = Files.createDirectory(temporary.resolve("clone"));
    for (String folder : List.of("catalogue", "quotes")) {
      copy(Path.of(folder), clone.resolve(folder));
    }
    program = RealProgram.installed(clone);
    OwnerOnly.folder(program.data());
    Files.writeString(
        program.data().resolve("local-threads.csv"),
        "district,size,family,checked_on,checked_by\nPort Harlow,2.5,NH,2026-01-31,gauge\n");
  }

  @Test
  void every_example_of_help_is_in_the_story_that_is_run() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (JsonNode command : OneDocument.in(program.run("help", "--json").out()).get("commands")) {
      if (!ELSEWHERE.contains(command.get("command").asString())) {
        missing.add(command.get("example").asString());
      }
    }
    missing.removeAll(story());
    assertThat(missing).as("examples that examples.txt does not run").isEmpty();
  }

  @Test
  void every_example_works_and_answers_one_json_document() throws IOException {
    List<String> story = story();

    RealProgram.Ended ended =
        program.runWith(String.join("\n", story) + "\n", "--json", "--keep-going");

    assertThat(ended.err()).doesNotContain("line ");
    assertThat(ended.exitCode()).isZero();
    int documents = 0;
    try (JsonParser text = JsonMapper.shared().createParser(ended.out());
        MappingIterator<JsonNode> nodes =
            JsonMapper.shared().readerFor(JsonNode.class).readValues(text)) {
      while (nodes.hasNext()) {
        assertThat(nodes.next().isObject()).isTrue();
        documents++;
      }
    }
    assertThat(documents).isEqualTo(story.size());
  }

  @Test
  void every_example_works_in_prose() throws IOException {
    RealProgram.Ended ended = program.runWith(String.join("\n", story()) + "\n", "--keep-going");

    assertThat(ended.err()).doesNotContain("line ");
    assertThat(ended.exitCode()).isZero();
  }

  private static List<String> story() throws IOException {
    Path file = Path.of("src/test/resources/hosewright/door/shell/examples.txt");
    return Files.readAllLines(file).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      files.forEach(
          file -> {
            try {
              Files.copy(file, to.resolve(from.relativize(file)));
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
  }
}
