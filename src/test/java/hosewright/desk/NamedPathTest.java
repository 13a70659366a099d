package hosewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.AllCommands;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
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
    assertThat(ended.err()).containsPattern("file|folder").doesNotContain("Exception");
  }
}
