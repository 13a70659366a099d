package hosewright.desk.end;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.thread.Families;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ListEndsTest {
  private final ListEnds list = new ListEnds();

  @Test
  void without_a_name_every_family_is_listed_and_no_end() {
    var listed = list.list(Optional.empty());

    assertThat(listed.families()).hasSameSizeAs(Families.all());
    assertThat(listed.ends()).isEmpty();
  }

  @Test
  void of_one_family_the_male_alone_has_a_measure_over_its_threads() {
    var listed = list.list(Optional.of("NH"));

    assertThat(listed.families()).singleElement().extracting("family").isEqualTo("NH");
    assertThat(listed.ends())
        .isNotEmpty()
        .filteredOn(end -> end.end().endsWith("female"))
        .allSatisfy(end -> assertThat(end.majorDiameterIn()).isNull());
    assertThat(listed.ends())
        .filteredOn(end -> end.end().equals("2.5 NH male"))
        .singleElement()
        .satisfies(end -> assertThat(end.majorDiameterIn()).isPositive());
  }

  @Test
  void a_family_misspelt_is_answered_with_the_nearest() {
    assertThatThrownBy(() -> list.list(Optional.of("Stortz")))
        .hasMessageContaining("Did you mean 'Storz'?");
  }
}
