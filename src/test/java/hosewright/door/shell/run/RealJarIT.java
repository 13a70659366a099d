package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program, as a user or a script meets it. */
final class RealJarIT {
  @TempDir private Path temporary;
  private RealProgram program;

  @BeforeEach
  void stand_in_an_empty_folder() throws IOException {
    program = RealProgram.installed(Files.createDirectory(temporary.resolve("work")));
  }

  @Test
  void the_jar_runs_alone_and_answers_with_one_json_document() {
    RealProgram alone = RealProgram.jar(temporary.resolve("work"));
    RealProgram.Ended ended = alone.run("version", "--json");
    assertThat(ended.exitCode()).isZero();
    assertThat(OneDocument.in(ended.out()).path("version").asString()).matches("\\d+\\.\\d+.*");
    assertThat(ended.err()).isEmpty();
  }

  @Test
  void an_unknown_command_is_bad_input_and_the_nearest_is_named() {
    RealProgram.Ended ended = program.run("verson");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err().lines())
        .containsExactly(
            "command cannot be 'verson': 'help' lists the commands. Did you mean 'version'?");
  }

  @Test
  void an_unknown_option_is_refused_and_the_nearest_is_named() {
    RealProgram.Ended ended = program.run("version", "--jsom");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err().lines()).hasSize(1);
    assertThat(ended.err()).contains("'--jsom'", "Did you mean '--json'?");
  }

  @Test
  void piped_commands_run_without_prompts_until_one_fails() {
    RealProgram.Ended ended = program.runWith("# first\n\nversion\nverson\nversion\n");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out().lines()).hasSize(1).allMatch(line -> line.startsWith("Hosewright "));
    assertThat(ended.err()).startsWith("line 4: command cannot be 'verson'");
  }

  @Test
  void the_jar_alone_stops_a_piped_script_too() {
    RealProgram alone = RealProgram.jar(temporary.resolve("work"));
    RealProgram.Ended ended = alone.runWith("version\nverson\nversion\n");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.out().lines()).hasSize(1);
    assertThat(ended.err()).startsWith("line 2: ");
  }

  @Test
  void two_slashes_do_not_end_a_script() {
    RealProgram.Ended ended = program.runWith("//\nversion\n");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("line 1: command cannot be '//'");
  }

  @Test
  void a_script_file_runs_and_quit_ends_it_well() throws IOException {
    Path script = temporary.resolve("two words.txt");
    Files.writeString(script, "version\r\nquit\r\nverson\r\n");
    RealProgram.Ended ended = program.run("@" + script);
    assertThat(ended.err()).isEmpty();
    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out().lines()).hasSize(1);
  }

  @Test
  void a_script_that_is_not_there_is_bad_input() {
    RealProgram.Ended ended = program.run("@no-such-file");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("script cannot be 'no-such-file'");
  }

  @Test
  void nothing_is_left_in_the_folder_the_user_stands_in() {
    program.runWith("version\nhelp\n");
    program.run("verson", "--verbose");
    assertThat(program.leftBehind()).isEmpty();
    assertThat(program.data()).doesNotExist();
  }

  @Test
  void settings_files_in_the_folder_the_user_stands_in_change_nothing() throws IOException {
    Files.writeString(
        temporary.resolve("work/application.properties"),
        "spring.main.banner-mode=console\ndebug=true\n");
    RealProgram.Ended ended = program.run("--version");
    assertThat(ended.out().lines()).hasSize(1);
    assertThat(ended.err()).isEmpty();
  }

  @Test
  void a_data_option_without_a_folder_is_bad_input() {
    RealProgram.Ended ended = program.run("version", "--data");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("--data is missing");
  }
}
