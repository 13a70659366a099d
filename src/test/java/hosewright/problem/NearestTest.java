package hosewright.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestTest {
  @Test
  void of_words_as_far_off_the_one_whose_letters_changed_places_is_meant() {
    assertThat(Nearest.to("--jbo", List.of("--db", "--job"))).isEqualTo("--job");
  }

  @Test
  void nothing_is_meant_when_more_than_half_of_the_letters_would_have_to_change() {
    assertThat(Nearest.to("hose", List.of("gasket"))).isEmpty();
  }
}
