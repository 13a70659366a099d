package hosewright.desk.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.fleet.record.DaysRecords.Change;
import hosewright.store.database.MigratedStore;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented hose of Port Harlow. */
final class RetireSectionsTest {
  @TempDir private Path folder;
  private OpenDesk books;
  private RetireSections retire;

  @BeforeEach
  void load() {
    MigratedStore.into(folder);
    books = OpenDesk.unused(folder);
    new LoadFleet(books).load(Path.of("catalogue/fleet"), Optional.empty(), false);
    retire = new RetireSections(books);
  }

  @Test
  void sections_named_leave_service_for_the_reason_given() {
    var retired = retire.retire(named(List.of("PH-0024", "PH-0060"), "lost", false));

    assertThat(retired.done()).isTrue();
    assertThat(retired.changes()).extracting(Change::section).containsExactly("PH-0024", "PH-0060");
    assertThat(left("PH-0024")).contains("lost");
  }

  @Test
  void a_trial_tells_the_same_and_retires_none() {
    var told = retire.retire(named(List.of("PH-0024"), "lost", true));

    assertThat(told.done()).isFalse();
    assertThat(told.changes()).hasSize(1);
    assertThat(left("PH-0024")).isEmpty();
  }

  @Test
  void one_unknown_section_keeps_all_of_them_in_service() {
    assertThatThrownBy(() -> retire.retire(named(List.of("PH-0024", "PH-006O"), "lost", false)))
        .hasMessageContaining("Did you mean 'PH-0060'?");
    assertThat(left("PH-0024")).isEmpty();
  }

  @Test
  void sections_and_rules_are_not_both_asked_for() {
    assertThatThrownBy(
            () ->
                retire.retire(
                    new RetireSections.Request(
                        List.of("PH-0024"), true, "lost", Optional.empty(), "", false)))
        .hasMessageContaining("not both");
  }

  private Optional<String> left(String section) {
    return new TraceSection(books).trace(section).left().map(TraceSection.Left::rule);
  }

  private static RetireSections.Request named(List<String> ids, String because, boolean dryRun) {
    return new RetireSections.Request(ids, false, because, Optional.empty(), "", dryRun);
  }
}
