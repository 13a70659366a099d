package hosewright.desk.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FindItemsTest {
  @TempDir private Path folder;

  @Test
  void of_more_than_are_wanted_the_best_are_told_and_how_many_there_are() {
    FindItems find = new FindItems(OpenDesk.withDemo(folder));

    var some = find.find("nh adapter", Optional.empty(), "2");
    var adapters = find.find("nh", Optional.of("Adapter"), "1000");

    assertThat(some.items()).hasSize(2);
    assertThat(some.count()).isGreaterThan(2);
    assertThat(adapters.items()).isNotEmpty().allMatch(item -> item.kind().equals("adapter"));
  }

  @Test
  void a_wrong_kind_and_a_wrong_count_are_refused_together() {
    FindItems find = new FindItems(OpenDesk.unused(folder));

    assertThatThrownBy(() -> find.find("nh", Optional.of("adaptor"), "1001"))
        .hasMessageContaining("Did you mean 'adapter'?")
        .hasMessageContaining("a whole number from 1 to 1000");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void an_item_is_known_in_any_case_of_its_letters() {
    OpenDesk books = OpenDesk.withDemo(folder);

    assertThat(new ShowItem(books).show("h175-dj-50-15nh", false).item())
        .isEqualTo("H175-DJ-50-15NH");
    assertThat(new TracePrices(books).trace("h175-dj-50-15nh").prices()).isNotEmpty();
  }

  @Test
  void costs_are_told_only_to_the_dealers_own_eyes() {
    ShowItem show = new ShowItem(OpenDesk.withDemo(folder));

    assertThat(show.show("H175-DJ-50-15NH", false).pricing().costs()).isEmpty();
    assertThat(show.show("H175-DJ-50-15NH", true).pricing().costs()).isPresent();
  }
}
