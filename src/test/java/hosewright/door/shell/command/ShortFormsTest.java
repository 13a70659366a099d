package hosewright.door.shell.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.door.shell.run.Shells;
import hosewright.door.shell.screen.Screen;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.ParsedInput;

final class ShortFormsTest {
  @TempDir private Path data;

  @Test
  void one_stands_for_a_command_with_its_options() throws IOException {
    keep("# mine", "", "hi = probe echo --text \"good day\"");
    ParsedInput input = new Shells(data).parser.parse("--json hi --rise 3ft");
    assertThat(input.subCommands()).containsExactly("echo");
    assertThat(input.options())
        .extracting(option -> option.longName() + " " + option.value())
        .containsExactly("json true", "text good day", "rise 3ft");
  }

  @Test
  void one_may_stand_for_a_built_in_one() throws IOException {
    keep("hi = pe --loud");
    assertThat(new Shells(data).parser.parse("hi").subCommands()).containsExactly("echo");
  }

  @Test
  void none_hides_a_command_its_first_word_or_a_built_in_one() throws IOException {
    keep("version = probe ask", "probe = probe ask", "pe = probe ask");
    Shells shell = new Shells(data);
    assertThat(shell.index.own().forms()).isEmpty();
    assertThat(shell.index.own().problems())
        .extracting(Problem::value)
        .containsExactly("version", "probe", "pe");
    assertThat(shell.parser.parse("version").commandName()).isEqualTo("version");
    assertThat(shell.parser.parse("pe").subCommands()).containsExactly("echo");
  }

  @Test
  void a_line_that_cannot_be_used_is_named_and_spoils_no_other() throws IOException {
    keep(
        "two words = probe echo",
        "nothing",
        "gone = probe ehco",
        "twice = probe echo",
        "twice = probe ask",
        "open = probe echo --text \"x",
        "far = probe echo --json",
        "good = probe echo");
    ShortForms own = new Shells(data).index.own();
    assertThat(own.forms().keySet()).containsExactly("twice", "good");
    assertThat(own.problems())
        .extracting(Problem::field)
        .containsExactly(lines(1), lines(2), lines(3), lines(5), lines(6), lines(7));
    assertThat(own.problems().get(2).nearest()).isEqualTo("probe echo");
  }

  @Test
  void a_mistyped_one_is_answered_with_the_nearest_and_with_what_the_file_has_wrong()
      throws IOException {
    keep("goodday = probe echo", "version = probe ask");
    Shells shell = new Shells(data);
    List<Problem> problems =
        catchThrowableOfType(BadInputException.class, () -> shell.parser.parse("godday"))
            .problems();
    assertThat(problems).extracting(Problem::nearest).containsExactly("goodday", "");
    assertThat(problems.get(1).field()).isEqualTo(lines(2));
  }

  @Test
  void help_lists_them() throws IOException {
    keep("hi = probe echo --text \"good day\"", "pe = probe ask");
    Shells shell = new Shells(data);
    String help = HelpText.overview(shell.index.all(), shell.index.own(), Screen.PIPED);
    assertThat(help)
        .contains("probe echo, pe  Says back", "hi  probe echo --text \"good day\"", lines(2));
  }

  private static String lines(int number) {
    return ShortForms.FILE + " line " + number;
  }

  private void keep(String... lines) throws IOException {
    Files.write(data.resolve(ShortForms.FILE), List.of(lines));
  }
}
