package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.command.ShortForms;
import hosewright.door.shell.screen.FileNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.Parser.ParseContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LineCompleterTest {
  @TempDir private Path data;

  @Test
  void first_words_are_offered_then_second_words() {
    assertThat(offered("")).contains("probe", "version", "quit", "exit");
    assertThat(offered("probe "))
        .containsExactlyInAnyOrder("ask", "echo", "keep", "paper", "unsafe");
  }

  @Test
  void options_are_offered_once_unless_they_may_be_repeated() {
    assertThat(offered("probe echo --text x --tag red "))
        .contains("--tag", "--rise")
        .doesNotContain("--text");
    assertThat(offered("probe echo --")).contains("--json", "--help");
  }

  @Test
  void values_are_offered_after_a_space_or_an_equals_sign() {
    assertThat(offered("probe echo --tag ")).containsExactly("red", "blue");
    assertThat(offered("probe echo --tag=")).containsExactly("--tag=red", "--tag=blue");
  }

  @Test
  void a_value_that_runs_on_is_completed_word_by_word() {
    assertThat(offered("probe keep --end 2.5 nh "))
        .containsSubsequence("male", "female")
        .contains("--quick");
    assertThat(offered("probe keep --end 2.5 NH female s")).contains("swivel");
  }

  @Test
  void behind_a_comma_what_is_not_named_yet_is_offered() {
    assertThat(offered("probe keep --papers pdf,")).containsExactly("pdf,csv");
  }

  @Test
  void short_forms_are_offered_and_lead_to_what_they_stand_for() throws IOException {
    Files.writeString(data.resolve(ShortForms.FILE), "red = probe echo --tag red");
    assertThat(offered("")).contains("red", "pe");
    assertThat(offered("red --")).contains("--text");
    assertThat(offered("pe --")).contains("--text");
  }

  @Test
  void help_is_completed_by_the_words_of_commands() {
    assertThat(offered("help ")).contains("probe", "version");
    assertThat(offered("help probe ")).contains("echo", "ask");
  }

  @Test
  void files_are_offered_folder_by_folder() throws IOException {
    Files.createDirectories(data.resolve("jobs/old"));
    Files.writeString(data.resolve("jobs/one.yaml"), "");
    assertThat(FileNames.beginning(data + "/jo")).containsExactly(data + "/jobs/");
    assertThat(FileNames.beginning(data + "/jobs/o"))
        .containsExactly(data + "/jobs/old/", data + "/jobs/one.yaml");
  }

  @Test
  void an_open_quote_is_one_word_and_what_is_chosen_is_quoted() {
    String line = "probe echo --text \"2.5 N";
    CompletingParsedLine parsed = parsed(line);
    assertThat(parsed.word()).isEqualTo("2.5 N");
    assertThat(parsed.rawWordLength()).isEqualTo("\"2.5 N".length());
    assertThat(parsed.escape("2.5 NH male", true)).hasToString("\"2.5 NH male\"");
    assertThat(parsed.escape("--text=2.5 NH male", true)).hasToString("--text=\"2.5 NH male\"");
  }

  private static CompletingParsedLine parsed(String line) {
    return (CompletingParsedLine)
        new LineParser().parse(line, line.length(), ParseContext.COMPLETE);
  }

  private List<String> offered(String line) {
    List<Candidate> candidates = new ArrayList<>();
    new LineCompleter(new Shells(data).index).complete(null, parsed(line), candidates);
    return candidates.stream().map(Candidate::value).toList();
  }
}
