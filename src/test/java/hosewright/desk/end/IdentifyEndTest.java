package hosewright.desk.end;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class IdentifyEndTest {
  private final IdentifyEnd identify = new IdentifyEnd();

  @Test
  void a_reading_in_millimetres_names_the_same_thread_as_in_inches() {
    var inches = identify.identify(Map.of(MeasuredField.OD, "1.99in", MeasuredField.TPI, "9"));
    var metric = identify.identify(Map.of(MeasuredField.OD, "50.546mm", MeasuredField.TPI, "9"));

    assertThat(inches.candidates()).isNotEmpty();
    assertThat(metric.candidates().get(0).end()).isEqualTo(inches.candidates().get(0).end());
  }

  @Test
  void a_half_left_unsaid_is_the_male_that_alone_can_be_measured() {
    assertThat(identify.identify(Map.of(MeasuredField.OD, "1.99in")).candidates())
        .isEqualTo(
            identify
                .identify(Map.of(MeasuredField.OD, "1.99in", MeasuredField.GENDER, "Male"))
                .candidates());
  }

  @Test
  void everything_wrong_with_a_reading_is_said_at_once() {
    BadInputException refused =
        catchThrowableOfType(
            BadInputException.class,
            () ->
                identify.identify(
                    Map.of(
                        MeasuredField.OD, "wide",
                        MeasuredField.TPI, "nine",
                        MeasuredField.TAPER, "conical",
                        MeasuredField.GENDER, "neither")));

    assertThat(refused.problems())
        .extracting(Problem::field)
        .contains("od", "tpi", "taper", "gender");
  }
}
