package hosewright.store.database;

import static hosewright.store.db.Tables.QUOTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.store.backup.Backup;
import hosewright.store.quote.TermsStore;
import hosewright.store.seal.FileSum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.h2.mvstore.MVMap;
import org.h2.mvstore.MVStore;
import org.h2.mvstore.db.RowDataType;
import org.h2.mvstore.db.ValueDataType;
import org.h2.mvstore.tx.TransactionMap;
import org.h2.mvstore.tx.TransactionStore;
import org.h2.mvstore.type.DataType;
import org.h2.mvstore.type.LongDataType;
import org.h2.mvstore.type.MetaType;
import org.h2.mvstore.type.StringDataType;
import org.h2.result.RowFactory;
import org.h2.result.SearchRow;
import org.h2.value.CompareMode;
import org.h2.value.TypeInfo;
import org.h2.value.Typed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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
    MigratedStore.into(folder);
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
        .isInstanceOf(ForeignStoreException.class)
        .hasMessageContaining("this version never makes");
    assertThat(canary).doesNotExist();
  }

  @Test
  void what_was_found_is_named_on_one_plain_line() {
    Poison.TRIGGER_WITH_SOURCE.into(folder, canary);

    assertThatThrownBy(() -> Database.open(folder))
        .hasMessageContaining("CREATE FORCE TRIGGER \"PUBLIC\".\"COUNTED\"")
        .message()
        .doesNotContain("\n");
  }

  @Test
  void a_store_that_waits_under_another_name_for_its_place_is_not_taken() throws IOException {
    Poison.TRIGGER_WITH_SOURCE.into(folder, canary);
    // H2 gives a file of this name the store's, where that is missing.
    Files.move(folder.resolve("store.mv.db"), folder.resolve("store.mv.db.newFile"));

    try (Database opened = Database.open(folder)) {
      assertThat(opened.context().fetchCount(QUOTE)).isZero();
    }
    assertThat(canary).doesNotExist();
  }

  @Test
  void a_class_named_as_a_data_type_is_not_loaded() throws IOException {
    try (MVStore store = MVStore.open(folder.resolve("store.mv.db").toString())) {
      MVMap<String, DataType<?>> types =
          store.openMap(
              "_",
              new MVMap.Builder<String, DataType<?>>()
                  .keyType(StringDataType.INSTANCE)
                  .valueType(new MetaType<>(null, null)));
      types.put("0", new CanaryType());
    }
    CanaryType.forget();
    Files.delete(folder.resolve(FileSum.NAME));

    assertThatThrownBy(() -> Database.open(folder))
        .isInstanceOf(ForeignStoreException.class)
        .hasMessageContaining("CanaryType");
    assertThat(CanaryType.wasMade()).isFalse();
  }

  @Test
  void a_java_object_where_open_transactions_are_kept_is_not_read() throws IOException {
    try (MVStore store = MVStore.open(folder.resolve("store.mv.db").toString())) {
      store.<Integer, Object[]>openMap("openTransactions").put(1, new Object[] {1, "prepared"});
    }
    Files.delete(folder.resolve(FileSum.NAME));

    assertThatThrownBy(() -> Database.open(folder))
        .isInstanceOf(ForeignStoreException.class)
        .hasMessageContaining("a transaction of another program");
  }

  @Test
  void a_statement_taken_out_by_a_transaction_that_never_ended_is_found() {
    Poison.TRIGGER_WITH_SOURCE.into(folder, canary);
    takeOutWithoutEnding();

    assertThatThrownBy(() -> Database.open(folder)).isInstanceOf(ForeignStoreException.class);
    assertThat(canary).doesNotExist();
  }

  /** H2 runs what stood there before, since the transaction did not come to its end. */
  private void takeOutWithoutEnding() {
    MVStore store = MVStore.open(folder.resolve("store.mv.db").toString());
    TransactionStore transactions =
        new TransactionStore(store, new MetaType<>(null, null), new ValueDataType(), 1000);
    transactions.init();
    TransactionMap<Long, SearchRow> meta =
        transactions.begin().openMap("table.0", LongDataType.INSTANCE, rows());
    for (Long key : List.copyOf(meta.keySet())) {
      if (meta.get(key).getValue(3).getString().contains("TRIGGER")) {
        meta.remove(key);
      }
    }
    store.commit();
    store.closeImmediately();
  }

  private static RowDataType rows() {
    Typed[] columns = {
      TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_INTEGER, TypeInfo.TYPE_VARCHAR
    };
    CompareMode order = CompareMode.getInstance(null, 0);
    RowDataType rows = new RowDataType(null, order, null, new int[4], null, 4, false);
    rows.setRowFactory(
        RowFactory.DefaultRowFactory.INSTANCE.createRowFactory(
            null, order, null, columns, null, false));
    return rows;
  }

  @Test
  void a_poisoned_store_can_be_replaced_by_a_backup_and_is_kept_aside() {
    Path backup = elsewhere.resolve("monday.zip");
    try (Database books = Database.open(folder)) {
      backup().make(books, Optional.of(backup));
    }
    Poison.VIEW_OVER_FILES.into(folder, canary);

    Path aside = backup().restore(backup).orElseThrow();

    assertThat(aside.getFileName().toString()).contains("not-opened");
    Database.open(folder).close();
    assertThat(canary).doesNotExist();
  }

  private Backup backup() {
    return new Backup(folder, "1.0", Instant.parse("2026-11-30T12:00:00Z"));
  }
}
