package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ends and measures typed without options. */
final class BareEndsTest {
  private static final List<String> BETWEEN = List.of("on", "to", "with");

  @Test
  void two_ends_stand_on_both_sides_of_a_small_word() {
    assertThat(pair("1.5 NPSH male on 1.5 NPT female"))
        .containsExactly("--a", "1.5 NPSH male", "--b", "1.5 NPT female");
    assertThatThrownBy(() -> pair("1.5 NPSH male"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("'on' between them");
  }

  @Test
  void what_was_measured_is_told_by_its_unit() {
    assertThat(measured("1.99in 9tpi")).containsExactly("--od", "1.99 in", "--tpi", "9");
    assertThat(measured("wrap 6.25 in 11.5 tpi tapered"))
        .containsExactly("--wrap", "6.25 in", "--tpi", "11.5", "--taper", "tapered");
  }

  @Test
  void a_number_alone_and_a_second_diameter_are_refused() {
    assertThatThrownBy(() -> measured("1.99 9tpi")).hasMessageContaining("1.99");
    assertThatThrownBy(() -> measured("1.99in 2.1in")).hasMessageContaining("only once");
  }

  private static List<String> pair(String line) {
    return EndPair.asOptions(List.of(line.split(" ")), BETWEEN, "a", "b");
  }

  private static List<String> measured(String line) {
    return MeasuredWords.asOptions(List.of(line.split(" ")));
  }
}
