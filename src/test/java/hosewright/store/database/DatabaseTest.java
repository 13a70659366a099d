package hosewright.store.database;

import static hosewright.store.db.Tables.ITEM;
import static hosewright.store.db.Tables.MARGIN_FLOOR;
import static hosewright.store.db.Tables.QUOTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Form;
import hosewright.catalogue.ItemKind;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.TroubleException;
import hosewright.quote.terms.DealerTerms;
import hosewright.store.quote.TermsStore;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DatabaseTest {
  /** No pump was on file then. */
  private static final Set<ItemKind> KINDS_BEFORE_SORTS =
      EnumSet.complementOf(EnumSet.of(ItemKind.PUMP));

  @TempDir Path folder;

  @Test
  void a_folder_that_is_not_there_is_made_with_the_store_in_it() {
    Path data = folder.resolve("new").resolve("data");

    Database.open(data).close();

    assertThat(data.resolve("store.mv.db")).isRegularFile();
  }

  @Test
  void what_the_program_makes_for_itself_is_its_owners_alone() throws IOException {
    Path data = folder.resolve("data");
    try (Database database = Database.open(data)) {
      database.marks().of(Series.QUOTE).raise(7);
    }

    assertThat(rights(data)).isEqualTo("rwx------");
    assertThat(rights(data.resolve("store.mv.db"))).isEqualTo("rw-------");
    assertThat(rights(data.resolve("highest-quote-number.txt"))).isEqualTo("rw-------");
  }

  @Test
  void a_mark_is_never_written_through_a_link() throws IOException {
    Path theirs = Files.writeString(folder.resolve("theirs.txt"), "1");
    Files.createSymbolicLink(folder.resolve("highest-quote-number.txt"), theirs);

    HighWaterMarks.in(folder).of(Series.QUOTE).raise(7);

    assertThat(theirs).hasContent("1");
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void a_folder_that_cannot_be_made_is_refused_in_plain_words() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "no folder");

    assertThatThrownBy(() -> Database.open(file.resolve("data")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("data folder cannot be")
        .hasMessageContaining("a folder that can be made");
  }

  @Test
  void a_path_that_would_change_the_settings_of_the_store_is_refused() {
    assertThatThrownBy(() -> Database.open(folder.resolve("a;INIT=x")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("without semicolons");
  }

  @Test
  void a_file_that_is_no_store_is_refused_in_plain_words_and_left_as_it_is() throws IOException {
    Path file = Files.writeString(folder.resolve("store.mv.db"), "shopping list".repeat(1000));

    assertThatThrownBy(() -> Database.open(folder))
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("restore a backup");
    assertThat(file).hasContent("shopping list".repeat(1000));
  }

  @Test
  void the_schema_known_is_that_of_the_last_migration() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sql"))) {
      assertThat(
              files
                  .map(file -> file.getFileName().toString())
                  .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                  .max())
          .hasValue(Schema.VERSION);
    }
  }

  @Test
  void each_commit_is_written_before_it_is_told_in_a_new_store_and_when_it_is_opened_again() {
    for (String when : List.of("new", "again")) {
      try (Database database = Database.open(folder)) {
        assertThat(
                database
                    .context()
                    .fetchValues(
                        "SELECT SETTING_VALUE FROM INFORMATION_SCHEMA.SETTINGS"
                            + " WHERE SETTING_NAME = 'WRITE_DELAY'"))
            .as(when)
            .isNotEmpty()
            .allMatch("0"::equals);
      }
    }
  }

  @Test
  void a_store_that_lacks_migrations_gets_them() {
    migratedTo("1");

    try (Database database = Database.open(folder)) {
      assertThat(database.context().fetchCount(QUOTE)).isZero();
      assertThat(database.context().fetchCount(MARGIN_FLOOR)).isZero();
    }
  }

  private void migratedTo(String version) {
    Flyway.configure()
        .dataSource("jdbc:h2:file:" + folder.resolve("store"), "sa", "")
        .locations("classpath:sql")
        .loggers(SilentLog.class.getName())
        .target(version)
        .load()
        .migrate();
  }

  @Test
  void an_item_kept_before_sorts_has_its_kinds_only_sort_or_an_unknown_one() throws SQLException {
    migratedTo("8");
    try (Connection kept =
            DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("store"), "sa", "");
        Statement insert = kept.createStatement()) {
      for (ItemKind kind : KINDS_BEFORE_SORTS) {
        insert.execute(
            "INSERT INTO ITEM (ITEM_NUMBER, DESCRIPTION, KIND, UNIT, WEIGHT_LB, MATERIAL,"
                + " DRINKING_WATER, DISCONTINUED, MARKED_TO, GASKETS_FITTED, PACK_SIZE, LEAD_DAYS,"
                + " ON_HAND) VALUES ('OLD "
                + kind.name()
                + "', 'kept before', '"
                + kind.name()
                + "', 'EACH', 1, '', FALSE, FALSE, '', FALSE, 1, 0, 0)");
      }
    }

    try (Database database = Database.open(folder)) {
      for (ItemKind kind : KINDS_BEFORE_SORTS) {
        var old = ITEM.ITEM_NUMBER.eq("OLD " + kind.name());
        assertThat(database.context().fetchValue(ITEM.SORT, old))
            .isEqualTo(Form.of(kind, List.of()).sort().name());
        assertThat(database.context().fetchValue(ITEM.GATED, old))
            .as("%s", kind)
            .isEqualTo("UNKNOWN");
      }
    }
  }

  @Test
  void rows_kept_before_rows_were_sealed_are_sealed_when_the_store_is_opened() throws SQLException {
    String url = "jdbc:h2:file:" + folder.resolve("store");
    Flyway.configure()
        .dataSource(url, "sa", "")
        .locations("classpath:sql")
        .loggers(SilentLog.class.getName())
        .target("9")
        .load()
        .migrate();
    try (Connection before = DriverManager.getConnection(url, "sa", "");
        Statement statement = before.createStatement()) {
      statement.execute("INSERT INTO DEALER_SETTING VALUES ('town', 'Port Harlow')");
    }

    for (int opened = 0; opened < 2; opened++) {
      try (Database database = Database.open(folder)) {
        assertThat(new TermsStore(database).load().settings()).containsEntry("town", "Port Harlow");
      }
    }
  }

  @Test
  void a_row_changed_behind_the_programs_back_is_told_and_named_when_it_is_read() {
    try (Database database = Database.open(folder)) {
      new TermsStore(database)
          .replace(new DealerTerms(List.of(), Map.of("town", "Port Harlow", "name", "Quillback")));
      database
          .context()
          .execute("UPDATE DEALER_SETTING SET SETTING_VALUE = 'x' WHERE SETTING_KEY = 'town'");

      assertThatThrownBy(() -> new TermsStore(database).load())
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("dealer setting cannot be used: it is damaged")
          .hasMessageContaining("town")
          .hasMessageContaining("data check");
    }
  }

  @Test
  void a_store_of_a_newer_program_is_refused() {
    try (Database database = Database.open(folder)) {
      database
          .context()
          .update(DSL.table(DSL.quotedName("flyway_schema_history")))
          .set(DSL.field(DSL.quotedName("version"), String.class), "99")
          .execute();
    }

    assertThatThrownBy(() -> Database.open(folder))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("newer version");
  }

  @Test
  void another_process_is_told_that_the_store_is_open() throws Exception {
    Process holder = otherProcess();
    try (BufferedReader said = reader(holder)) {
      assertThat(said.readLine()).isEqualTo("open");

      assertThatThrownBy(() -> Database.open(folder, Duration.ZERO))
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("another hosewright has this store open");
    } finally {
      holder.destroyForcibly().waitFor();
    }
  }

  @Test
  void a_process_waits_for_another_that_is_about_to_end() throws Exception {
    Process holder = otherProcess();
    try (BufferedReader said = reader(holder)) {
      assertThat(said.readLine()).isEqualTo("open");
      holder.getOutputStream().close();

      Database.open(folder, Duration.ofMinutes(1)).close();
    } finally {
      holder.destroyForcibly().waitFor();
    }
  }

  @Test
  void a_store_whose_process_was_killed_opens_again() throws Exception {
    Process holder = otherProcess();
    try (BufferedReader said = reader(holder)) {
      assertThat(said.readLine()).isEqualTo("open");
    }
    holder.destroyForcibly().waitFor();

    try (Database database = Database.open(folder, Duration.ofMinutes(1))) {
      assertThat(new TermsStore(database).load().settings()).containsEntry("town", "Port Harlow");
    }
  }

  private Process otherProcess() throws IOException {
    MigratedStore.into(folder);
    return new ProcessBuilder(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // It lives too briefly for the second compiler to be worth its work.
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                StoreHolder.class.getName(),
                folder.toString()))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static BufferedReader reader(Process process) {
    return new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }
}
