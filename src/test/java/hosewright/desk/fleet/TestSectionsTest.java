package hosewright.desk.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.store.database.MigratedStore;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented hose of Port Harlow. */
final class TestSectionsTest {
  private static final List<String> PASSED =
      List.of("PH-0024", "2026-10-30", "pass", "300", "3", "", "");

  @TempDir private Path folder;
  private OpenDesk books;

  @BeforeEach
  void load() {
    MigratedStore.into(folder);
    books = OpenDesk.unused(folder);
    new LoadFleet(books).load(Path.of("catalogue/fleet"), Optional.empty(), false);
  }

  @Test
  void a_record_entered_twice_is_on_file_once() {
    assertThat(enter(PASSED).records()).isEqualTo(1);

    var again = enter(PASSED);

    assertThat(again.records()).isZero();
    assertThat(again.alreadyOnFile()).isEqualTo(1);
  }

  @Test
  void a_hose_that_leaks_under_test_leaves_service() {
    var entered = enter(List.of("PH-0092", "2026-10-30", "leak", "300", "", "", ""));

    assertThat(entered.changes()).singleElement().extracting("section").isEqualTo("PH-0092");
  }

  @Test
  void one_record_that_cannot_be_keeps_the_whole_day_out() {
    int before = records("PH-0024");

    assertThatThrownBy(
            () -> enter(PASSED, List.of("PH-9999", "2026-10-30", "pass", "300", "3", "", "")))
        .hasMessageContaining("PH-9999");
    assertThat(records("PH-0024")).isEqualTo(before);
  }

  @Test
  void without_hose_on_record_there_is_nothing_to_test(@TempDir Path empty) {
    assertThatThrownBy(() -> new PrepareTests(OpenDesk.unused(empty)).prepare())
        .hasMessageContaining("no hose on record yet");
  }

  @SafeVarargs
  private final TestSections.Entered enter(List<String>... rows) {
    return new TestSections(books)
        .enter(TestRecords.answered(List.of(rows)), new PrepareTests(books).prepare());
  }

  private int records(String section) {
    return new TraceSection(books).trace(section).records().size();
  }
}
