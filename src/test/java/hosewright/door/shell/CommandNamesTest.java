package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.ReferenceTable;
import hosewright.door.shell.command.CommandSearch;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.run.CommandTrial;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.Command;

/** What the trade's commands are called. */
final class CommandNamesTest {
  @TempDir private Path data;

  @Test
  void no_short_form_hides_a_command_its_first_word_or_another() {
    List<Command> commands = commands();
    assertThat(
            Stream.concat(
                commands.stream().flatMap(c -> c.getAliases().stream()),
                Stream.concat(
                        commands.stream().map(Command::getName),
                        commands.stream().map(c -> c.getName().split(" ")[0]))
                    .distinct()))
        .doesNotHaveDuplicates();
  }

  @Test
  void a_short_form_is_one_word_of_letters() {
    assertThat(commands().stream().flatMap(c -> c.getAliases().stream()))
        .hasSizeGreaterThan(10)
        .allMatch(word -> word.matches("[a-z]{3,}"));
  }

  /** What people want, in words that were written down without the names of commands at hand. */
  @Test
  void nine_of_ten_intentions_find_their_command_among_the_first_three() {
    CommandSearch search =
        new CommandSearch(commands().stream().map(ShellCommand.class::cast).toList());
    List<String> missed = new ArrayList<>();
    List<CSVRecord> intentions = intentions();
    for (CSVRecord row : intentions) {
      List<String> found =
          search.find(row.get("intention")).stream().limit(3).map(ShellCommand::getName).toList();
      if (Stream.of(row.get("command").split(" \\| ")).noneMatch(found::contains)) {
        missed.add(row.get("intention") + " found " + found);
      }
    }
    assertThat(intentions).hasSizeGreaterThanOrEqualTo(100);
    assertThat(missed).hasSizeLessThanOrEqualTo(intentions.size() / 10);
  }

  @Test
  void every_command_has_words_that_people_use_for_it() {
    List<String> named =
        ReferenceTable.rows("people-words.csv", row -> row.get("command")).stream()
            .filter(name -> !List.of("help", "quit", "version").contains(name))
            .toList();
    assertThat(named)
        .containsExactlyInAnyOrderElementsOf(commands().stream().map(Command::getName).toList());
  }

  private static List<CSVRecord> intentions() {
    try (Reader file =
        new InputStreamReader(
            CommandNamesTest.class.getResourceAsStream("intentions.csv"), StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(file)
          .getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<Command> commands() {
    List<Command> commands = new ArrayList<>();
    CommandTrial.of(
        data,
        trial -> {
          commands.addAll(AllCommands.of(trial));
          return commands;
        });
    return commands;
  }
}
