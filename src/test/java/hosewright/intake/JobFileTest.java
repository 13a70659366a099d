package hosewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class JobFileTest {
  @TempDir private Path folder;

  static Stream<Path> demo_jobs() throws IOException {
    return Files.list(Path.of("quotes")).filter(file -> file.toString().endsWith(".yaml")).sorted();
  }

  @ParameterizedTest
  @MethodSource("demo_jobs")
  void every_demo_job_reads_as_a_job(Path file) {
    assertThat(JobForm.read(JobFile.read(file).answers()).title()).isNotBlank();
  }

  @ParameterizedTest
  @MethodSource("demo_jobs")
  void what_is_written_reads_back_the_same(Path file) {
    Map<JobField, String> answers = JobFile.read(file).answers();
    assertThat(JobText.parse(JobText.write(answers))).isEqualTo(answers);
  }

  @Test
  void awkward_answers_survive_writing() {
    Map<JobField, String> answers = new TreeMap<>();
    answers.put(JobField.TITLE, "# \"quoted\": yes, \\ and - a dash");
    answers.put(JobField.RISE, "-20 ft");
    answers.put(JobField.FROM, "2½ NH male");
    answers.put(JobField.CUSTOMER, "no");
    answers.put(JobField.DATE, "2026-11-25");
    assertThat(JobText.parse(JobText.write(answers))).isEqualTo(answers);
  }

  @Test
  void values_are_taken_as_written() {
    Map<JobField, String> answers = JobText.parse("size: 2.50\ndate: 2026-11-25\nlines: 02\n");
    assertThat(answers.values()).containsExactlyInAnyOrder("2.50", "2026-11-25", "02");
  }

  @Test
  void a_list_may_stand_on_several_lines() {
    assertThat(JobText.parse("accessories:\n  - wrench\n  - ramp\n"))
        .containsEntry(JobField.ACCESSORIES, "wrench, ramp");
  }

  @Test
  void an_unknown_word_is_named_with_its_line_and_the_nearest_word() {
    assertThatThrownBy(() -> JobText.parse("from: 2.5 NH male\nlenght: 400 ft\n"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("line 2")
        .hasMessageContaining("'lenght'")
        .hasMessageContaining("Did you mean 'length'?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "just words",
        "from: [2.5 NH male",
        "from: \"2.5 NH",
        "from: {a: b}",
        "from: 1\nfrom: 2",
        "a: &x [1]\nb: *x",
        "\u0000",
        "- 1\n- 2",
        "from: !!java.net.URL [x]"
      })
  void what_is_no_job_file_is_refused_in_plain_words(String text) {
    assertThatThrownBy(() -> JobText.parse(text)).isInstanceOf(BadInputException.class);
  }

  @Test
  void a_misspelt_file_is_refused_with_the_job_file_beside_it() throws IOException {
    Path there = Files.writeString(folder.resolve("barn-fill.yaml"), "length: 1 ft\n");

    assertThatThrownBy(() -> JobFile.read(folder.resolve("barn-fil.yaml")))
        .hasMessageContaining("Did you mean '" + there + "'?");
  }

  @Test
  void a_device_that_never_ends_is_refused_and_a_pipe_is_not_waited_for()
      throws IOException, InterruptedException {
    Path zero = Path.of("/dev/zero");
    assumeTrue(Files.exists(zero), "this system has no such device");
    Path pipe = folder.resolve("pipe.yaml");
    assumeTrue(
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0,
        "this system has no pipes with a name");

    for (Path other : new Path[] {zero, pipe, folder}) {
      assertThatThrownBy(() -> JobFile.read(other))
          .hasMessageContaining("no folder, pipe or device");
    }
  }

  @Test
  void a_hidden_mark_is_refused_with_its_line_written_or_as_an_escape() {
    assertThatThrownBy(() -> JobText.parse("from: 2.5 NH male\ntitle: \u202Eyard\n"))
        .hasMessageContaining("job file line 2 cannot be 'title: {U+202E}yard'");
    assertThatThrownBy(() -> JobText.parse("# kept too \u200B\nfrom: 2.5 NH male\n"))
        .hasMessageContaining("job file line 1");
    assertThatThrownBy(() -> JobText.parse("from: 2.5 NH male\ntitle: \"\\x1b[2Jyard\"\n"))
        .hasMessageContaining("job file line 2 cannot be '{U+001B}[2Jyard'")
        .hasMessageContaining("Did you mean '[2Jyard'?");
    assertThatThrownBy(() -> JobText.parse("accessories: [wrench, \"ramp\\0\"]\n"))
        .hasMessageContaining("{U+0000}");
  }

  @Test
  void a_file_that_cannot_be_read_is_refused() throws IOException {
    Path latin1 = Files.write(folder.resolve("latin1.yaml"), new byte[] {'a', (byte) 0xBD});
    Path large = Files.write(folder.resolve("large.yaml"), new byte[100_000]);
    for (Path file : new Path[] {folder, folder.resolve("missing.yaml"), latin1, large}) {
      assertThatThrownBy(() -> JobFile.read(file))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining(file.toString());
    }
  }
}
