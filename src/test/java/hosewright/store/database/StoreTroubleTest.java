package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.RefusalException;
import hosewright.problem.RefusalException.Kind;
import hosewright.problem.TroubleException;
import hosewright.problem.TroubleException.Kept;
import java.sql.BatchUpdateException;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StoreTroubleTest {
  @ParameterizedTest
  @ValueSource(strings = {"40001", "40P01", "55P03", "HYT00"})
  void a_deadlock_or_a_row_held_too_long_is_a_conflict_with_somebody_else(String state) {
    assertThat(told(state)).map(RefusalException::kind).contains(Kind.CONFLICT);
  }

  @ParameterizedTest
  @CsvSource({
    "53100, NOTHING",
    "25006, NOTHING",
    "42501, NOTHING",
    "08006, MAYBE",
    "57P01, MAYBE",
    "53300, NOTHING",
    "53200, NOTHING",
    "57014, NOTHING",
    "58030, NOTHING",
    "XX000, NOTHING",
    "60000, NOTHING",
    "25P03, MAYBE",
    "08007, MAYBE",
    "40003, MAYBE",
    "28P01, NOTHING",
    "3D000, NOTHING"
  })
  void a_full_disk_a_closed_store_and_a_lost_server_are_trouble(String state, Kept kept) {
    assertThat(told(state))
        .get()
        .isInstanceOfSatisfying(
            TroubleException.class, trouble -> assertThat(trouble.kept()).isEqualTo(kept));
  }

  @Test
  void what_hides_behind_a_failure_that_says_nothing_is_told_too() {
    SQLException silent = new SQLException("as the pool says it");
    silent.initCause(new SQLException("as the driver says it", "08006"));

    assertThat(StoreTrouble.of(silent, "database books")).isPresent();
  }

  @Test
  void a_disk_that_fills_in_the_middle_of_a_batch_is_told_too() {
    BatchUpdateException batch = new BatchUpdateException("General error", "50000", new int[0]);
    batch.setNextException(new SQLException("Writing failed: File too large", "90028"));

    assertThat(StoreTrouble.of(batch, "data folder books"))
        .hasValueSatisfying(told -> assertThat(told).hasMessageContaining("no room left"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"42601", "23505"})
  void a_fault_of_ours_is_none_of_these(String state) {
    assertThat(told(state)).isEmpty();
  }

  private static Optional<RefusalException> told(String state) {
    return StoreTrouble.of(new SQLException("as the driver says it", state), "database books");
  }
}
