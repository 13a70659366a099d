package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LineWordsTest {
  @Test
  void a_job_said_in_one_breath_is_its_options() {
    assertThat(read("2.5 NH male hydrant to 1.5 NH nozzle 400ft 150gpm 50psi"))
        .containsExactly(
            "--from", "2.5 NH male hydrant",
            "--to", "1.5 NH nozzle",
            "--length", "400ft",
            "--flow", "150gpm",
            "--need", "50psi");
  }

  @Test
  void units_may_stand_apart_and_in_any_order_with_size_use_and_height() {
    assertThat(
            read(
                "from 2.5 NH male to 1.5 in NH nozzle 75 psi at 360 lpm 1.75in over 90 m up 20 ft"
                    + " fire"))
        .containsExactly(
            "--from", "2.5 NH male",
            "--to", "1.5 in NH nozzle",
            "--need", "75 psi",
            "--flow", "360 lpm",
            "--size", "1.75in",
            "--length", "90 m",
            "--rise", "20 ft",
            "--use", "fire");
  }

  @Test
  void two_pressures_could_mean_two_things_and_are_asked_back() {
    assertThatThrownBy(() -> read("2.5 NH male hydrant to 1.5 NH nozzle 400ft 50psi 120psi"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("120psi")
        .hasMessageContaining("--source-pressure");
  }

  @Test
  void a_word_that_says_nothing_here_is_named() {
    assertThatThrownBy(() -> read("2.5 NH male hydrant to 1.5 NH nozzle 400ft quickly"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("quickly");
    assertThatThrownBy(() -> read("2.5 NH male hydrant"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("'to'");
  }

  private static List<String> read(String line) {
    return LineWords.asOptions(List.of(line.split(" ")));
  }
}
