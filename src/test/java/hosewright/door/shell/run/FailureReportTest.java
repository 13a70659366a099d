package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import hosewright.problem.BadInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FailureReportTest {
  private static final BadInputException LONG =
      new BadInputException(
          "length", "400", "a number needs its unit; give a length such as 400 ft");

  @TempDir private Path folder;

  @Test
  void on_a_narrow_screen_a_problem_is_wrapped_between_words() {
    assertThat(said(new Screen(40, false)).lines())
        .hasSizeGreaterThan(1)
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(40));
  }

  @Test
  void for_another_program_a_problem_is_one_line() {
    assertThat(said(Screen.PIPED).lines()).hasSize(1);
  }

  @Test
  void another_program_is_told_the_kind_beside_the_words() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    try {
      Standard standard = new Standard(false, StandardCharsets.UTF_8, Screen.PIPED);
      new FailureReport(new Workspace(Map.of()), standard)
          .of(LONG, TypedNames.NONE, true, false, "", Screen.PIPED);
    } finally {
      System.setOut(before);
    }
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("\"kind\" : \"bad_input\"", "\"message\" : ", "\"problems\" : ");
  }

  @Test
  void a_file_that_the_system_would_not_give_is_trouble_and_no_fault_of_ours() {
    String said =
        said(
            new UncheckedIOException(
                new FileSystemException("/books/highest-quote-number.txt", null, "Is a directory")),
            Screen.PIPED);

    assertThat(said).contains("/books/highest-quote-number.txt", "Is a directory");
    assertThat(said).doesNotContain("Hosewright failed");
  }

  @Test
  void a_pipe_in_the_place_of_the_details_is_told_and_not_waited_for()
      throws IOException, InterruptedException {
    Path pipe = folder.resolve(FailureReport.LOG);
    assumeTrue(
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0,
        "this system has no pipes with a name");

    assertThat(said(new IllegalStateException("lost its way"), Screen.PIPED))
        .contains("Hosewright failed", "The details could not be kept");
  }

  private String said(Screen screen) {
    return said(LONG, screen);
  }

  private String said(Throwable failure, Screen screen) {
    PrintStream before = System.err;
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    try {
      Standard standard = new Standard(false, StandardCharsets.UTF_8, Screen.PIPED);
      new FailureReport(new Workspace(Map.of("HOSEWRIGHT_DATA", folder.toString())), standard)
          .of(failure, TypedNames.NONE, false, true, "", screen);
    } finally {
      System.setErr(before);
    }
    return err.toString(StandardCharsets.UTF_8);
  }
}
