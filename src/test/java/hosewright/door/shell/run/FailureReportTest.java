package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import hosewright.problem.BadInputException;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class FailureReportTest {
  private static final BadInputException LONG =
      new BadInputException(
          "length", "400", "a number needs its unit; give a length such as 400 ft");

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

  private static String said(Screen screen) {
    PrintStream before = System.err;
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    try {
      Standard standard = new Standard(false, StandardCharsets.UTF_8, Screen.PIPED);
      new FailureReport(new Workspace(Map.of()), standard)
          .of(LONG, TypedNames.NONE, false, false, "", screen);
    } finally {
      System.setErr(before);
    }
    return err.toString(StandardCharsets.UTF_8);
  }
}
