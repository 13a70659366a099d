package hosewright.door.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
