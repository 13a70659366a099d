package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What a framework's stock runner gets wrong for scripts, tried on the built jar. */
final class ShellTrapsIT {
  @TempDir private Path temporary;
  private RealProgram program;

  @BeforeEach
  void stand_in_an_empty_folder() throws IOException {
    program = RealProgram.withProbes(Files.createDirectory(temporary.resolve("work")));
  }

  @Test
  void values_arrive_as_they_were_given() {
    RealProgram.Ended ended =
        program.run(
            "probe",
            "echo",
            "--json",
            "--text",
            "2.5 NH  male",
            "--rise",
            "-20ft",
            "--loud",
            "--tag=a b",
            "--tag",
            "http://c",
            "word",
            "--",
            "--not-an-option");
    JsonNode said = OneDocument.in(ended.out());
    assertThat(ended.exitCode()).isZero();
    assertThat(said.path("text").asString()).isEqualTo("2.5 NH  male");
    assertThat(said.path("rise").asString()).isEqualTo("-20ft");
    assertThat(said.path("loud").asBoolean()).isTrue();
    assertThat(said.path("tags").values())
        .extracting(JsonNode::asString)
        .containsExactly("a b", "http://c");
    assertThat(said.path("words").values())
        .extracting(JsonNode::asString)
        .containsExactly("word", "--not-an-option");
  }

  @Test
  void a_default_holds_when_nothing_is_given_and_a_flag_is_off() {
    JsonNode said = OneDocument.in(program.run("probe", "echo", "--json").out());
    assertThat(said.path("slack").asString()).isEqualTo("5%");
    assertThat(said.path("loud").asBoolean()).isFalse();
    assertThat(said.path("text").isNull()).isTrue();
  }

  @Test
  void quoted_values_in_a_script_stay_whole_and_slashes_are_letters() {
    RealProgram.Ended ended =
        program.runWith("probe echo --json --text \"2.5 NH male\" --rise=-20ft //\n");
    JsonNode said = OneDocument.in(ended.out());
    assertThat(said.path("text").asString()).isEqualTo("2.5 NH male");
    assertThat(said.path("rise").asString()).isEqualTo("-20ft");
    assertThat(said.path("words").path(0).asString()).isEqualTo("//");
  }

  @Test
  void a_program_fault_exits_1_with_plain_words_and_no_trace() {
    RealProgram.Ended ended = program.run("probe", "fault");
    assertThat(ended.exitCode()).isEqualTo(1);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err().lines()).hasSize(2);
    assertThat(ended.err()).contains("the pump is on fire").doesNotContain("\tat ", "Exception:");
    assertThat(program.data()).doesNotExist();
  }

  @Test
  void verbose_keeps_the_trace_in_the_data_folder_and_says_where() throws IOException {
    RealProgram.Ended ended = program.run("probe", "fault", "--verbose", "--json");
    Path log = program.data().resolve("hosewright.log");
    assertThat(ended.exitCode()).isEqualTo(1);
    assertThat(ended.err()).contains(log.toString()).doesNotContain("\tat ");
    assertThat(Files.readString(log)).contains("IllegalStateException", "\tat ");
    assertThat(OneDocument.in(ended.out()).path("error").path("message").asString())
        .contains("the pump is on fire");
  }

  @Test
  void no_safe_plan_exits_3_and_still_answers() {
    RealProgram.Ended ended = program.run("probe", "unsafe", "--json");
    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(OneDocument.in(ended.out()).path("feasible").asBoolean(true)).isFalse();
  }

  @Test
  void every_problem_is_told_in_words_and_in_json() {
    RealProgram.Ended ended = program.run("probe", "refuse", "--json");
    JsonNode problems = OneDocument.in(ended.out()).path("error").path("problems");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err().lines())
        .containsExactly(
            "--from cannot be '2.5 NG male': give an end. Did you mean '2.5 NH male'?",
            "--length cannot be '-1ft': give feet above zero.");
    assertThat(problems.path(0).path("field").asString()).isEqualTo("--from");
    assertThat(problems.path(0).path("nearest").asString()).isEqualTo("2.5 NH male");
    assertThat(problems.path(1).path("value").asString()).isEqualTo("-1ft");
  }

  @Test
  void a_script_stops_with_the_code_of_the_command_that_failed() {
    RealProgram.Ended ended = program.runWith("probe unsafe\nprobe echo\n", "--json");
    assertThat(ended.exitCode()).isEqualTo(3);
    assertThat(OneDocument.in(ended.out()).path("feasible").asBoolean(true)).isFalse();
  }

  @Test
  void the_data_folder_is_the_one_asked_for_and_is_made() {
    Path asked = temporary.resolve("my data/deep");
    RealProgram.Ended ended = program.run("probe", "keep", "--data=" + asked);
    assertThat(ended.out().strip()).isEqualTo(asked.toString());
    assertThat(asked).isDirectory();
    assertThat(program.data()).doesNotExist();
  }

  @Test
  void a_data_folder_that_cannot_be_made_is_bad_input() throws IOException {
    Path file = Files.writeString(temporary.resolve("file"), "");
    RealProgram.Ended ended = program.run("probe", "keep", "--data", file.resolve("x").toString());
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("data folder cannot be '" + file.resolve("x") + "'");
    assertThat(ended.err().lines()).hasSize(1);
  }

  @Test
  void a_question_is_never_put_where_nobody_can_answer() {
    RealProgram.Ended ended = program.runWith("probe ask\nQuillback\n");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).startsWith("line 1: name is missing");
  }

  @Test
  void a_script_cannot_change_the_data_folder() {
    RealProgram.Ended ended = program.runWith("probe echo --data elsewhere\n");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("line 1: --data cannot be 'elsewhere'");
  }
}
