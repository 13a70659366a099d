package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ParsedInput;

final class CommandLineParserTest {
  @TempDir private Path data;

  @Test
  void a_question_mark_is_help() {
    assertThat(parse("?").commandName()).isEqualTo("help");
    assertThat(parse("? probe").commandName()).isEqualTo("help");
    assertThat(parse("?probe").arguments())
        .extracting(CommandArgument::value)
        .containsExactly("probe");
  }

  @Test
  void no_option_is_guessed_from_another_that_only_sounds_alike() {
    assertThatThrownBy(() -> parse("probe echo --price 3"))
        .hasMessageContaining("--price")
        .hasMessageNotContaining("Did you mean");
    assertThatThrownBy(() -> parse("probe echo --txet 3"))
        .hasMessageContaining("Did you mean '--text'");
    assertThatThrownBy(() -> parse("probe echo --tex 3"))
        .hasMessageContaining("Did you mean '--text'");
  }

  @Test
  void what_a_word_can_only_mean_is_pointed_to() {
    assertThatThrownBy(() -> parse("paper 1")).hasMessageContaining("'probe paper 1'");
  }

  @Test
  void both_ways_of_giving_a_value_are_one() {
    assertThat(values("probe echo --text a --rise=-20ft")).containsExactly("text a", "rise -20ft");
  }

  @Test
  void an_alias_names_the_command() {
    assertThat(parse("pe --loud").subCommands()).containsExactly("echo");
  }

  @Test
  void options_of_every_command_are_found_before_and_after_its_name() {
    assertThat(values("--json probe echo --verbose")).containsExactly("json true", "verbose true");
  }

  @Test
  void version_is_answered_whatever_else_is_typed() {
    assertThat(parse("probe echo --version").commandName()).isEqualTo("version");
  }

  @Test
  void after_two_dashes_everything_is_a_word() {
    ParsedInput input = parse("probe echo -- --json --text");
    assertThat(input.options()).isEmpty();
    assertThat(input.arguments()).extracting("value").containsExactly("--json", "--text");
  }

  @Test
  void a_flag_takes_no_value() {
    assertThat(problems("probe echo --loud=very"))
        .containsExactly(Problem.of("--loud", "very", "it takes no value"));
    assertThat(values("probe echo --loud=false")).isEmpty();
  }

  @Test
  void every_problem_is_told_at_once() {
    assertThat(problems("probe echo --text --rise 1 --rise 2 --tga x"))
        .extracting(Problem::field)
        .containsExactly("--text", "--rise", "option");
  }

  @Test
  void an_unknown_option_does_not_make_its_value_a_problem_too() {
    assertThat(problems("probe keep --folder x")).hasSize(1);
  }

  @Test
  void a_surplus_word_is_told_with_a_hint_to_quote() {
    assertThat(problems("version two"))
        .extracting(Problem::allowed)
        .containsExactly("version takes options only; put quotes around a value that has spaces");
  }

  @Test
  void a_value_runs_on_to_the_next_option_where_a_command_takes_no_words() {
    assertThat(values("probe keep --end 2.5 NH male --papers=pdf, csv --quick"))
        .containsExactlyInAnyOrder("end 2.5 NH male", "papers pdf, csv", "quick true");
  }

  @Test
  void nothing_runs_on_after_a_flag_or_before_an_option() {
    assertThat(problems("probe keep stray --quick late"))
        .extracting(Problem::value)
        .containsExactly("stray", "late");
  }

  @Test
  void where_a_command_takes_words_they_are_no_part_of_a_value() {
    ParsedInput input = parse("probe echo --text a b");
    assertThat(input.arguments()).extracting("value").containsExactly("b");
  }

  @Test
  void a_wrong_verb_is_answered_with_the_verbs_there_are() {
    assertThat(problems("probe ehco"))
        .containsExactly(
            new Problem(
                "command",
                "probe ehco",
                "there is probe ask, probe echo, probe keep, probe paper, probe unsafe",
                "probe echo"));
  }

  @Test
  void help_on_a_command_asks_for_none_of_its_required_options() {
    assertThat(values("probe echo --nonsense --help")).containsExactly("help true");
  }

  private ParsedInput parse(String line) {
    return new Shells(data).parser.parse(line);
  }

  private List<String> values(String line) {
    return parse(line).options().stream().map(CommandLineParserTest::shown).toList();
  }

  private static String shown(CommandOption option) {
    return option.longName() + " " + option.value();
  }

  private List<Problem> problems(String line) {
    return catchThrowableOfType(BadInputException.class, () -> parse(line)).problems();
  }
}
