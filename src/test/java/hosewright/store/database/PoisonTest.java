package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.RefusalException;
import hosewright.store.quote.TermsStore;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A data folder that somebody handed over runs nothing that he hid in its store. */
final class PoisonTest {
  @TempDir private Path folder;
  @TempDir private Path elsewhere;
  private Path canary;

  @BeforeEach
  void make_a_store() {
    canary = elsewhere.resolve("canary");
    Database.open(folder).close();
  }

  @ParameterizedTest
  @EnumSource
  void a_store_with_anything_that_our_migrations_did_not_make_is_refused_before_it_runs(
      Poison poison) {
    poison.into(folder, canary);

    assertThatThrownBy(
            () -> {
              try (Database opened = Database.open(folder)) {
                new TermsStore(opened).load();
              }
            })
        .isInstanceOf(RefusalException.class);
    assertThat(canary).doesNotExist();
  }
}
