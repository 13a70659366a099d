package hosewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.problem.BadInputException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class NamedPathTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "catalogue load|?",
        "catalogue check|?",
        "catalogue load|catalogue|--mapping|?",
        "fleet load|?",
        "line plan|--job|?",
        "end show|2.5 NH male|--picture|?.svg",
        "data backup|?",
        "data restore|?",
        "tender price|?"
      })
  void a_name_that_no_file_can_have_is_refused_in_words(String line) {
    CommandTrial shell = CommandTrial.of(folder, AllCommands::of);
    // Nothing but the character zero is refused on every system.
    Ended ended = shell.run(line.replace("?", "a\0b").replaceFirst("^(\\w+) ", "$1|").split("\\|"));

    assertThat(ended.exitCode()).as(ended.err()).isEqualTo(2);
    // The gate for text at the door meets it first, and says what no text may hold.
    assertThat(ended.err()).contains("control characters").doesNotContain("Exception");
  }

  @Test
  void a_desk_without_such_a_gate_refuses_it_as_a_place() {
    assertThatThrownBy(() -> NamedPath.of("place", "a\0b", "the name of a folder"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("the name of a folder");
  }
}
