package hosewright.store.database;

import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.quotedName;
import static org.jooq.impl.DSL.table;

import hosewright.problem.ConflictException;
import java.util.OptionalInt;
import java.util.Set;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jooq.exception.DataAccessException;

/** Sees to it that a store has the tables this version of the program works with. */
public final class Schema {
  /** Number of the last migration in {@code sql/}. */
  public static final int VERSION = 14;

  /** As the embedded store and the server say it. */
  private static final Set<String> NO_SUCH_TABLE = Set.of("42S02", "42S04", "42P01");

  /** Noted when the rows of a store were sealed; here, not to load a class of Flyway for it. */
  static final String SEALED = "seal rows";

  private Schema() {}

  /**
   * Refuses what a newer version of this program wrote.
   *
   * @param thing what it is, and how it is named
   * @param version its schema's
   */
  public static void refuseNewer(String thing, String named, int version) {
    if (version > VERSION) {
      throw ConflictException.stateForbids(
          thing,
          named,
          "was written by a newer version of this program (schema %d, this one knows %d)"
              .formatted(version, VERSION),
          "use that one");
    }
  }

  /**
   * Runs the migrations a store lacks. A store that has them all is left alone without loading
   * Flyway, which would take longer than most commands.
   */
  static void bringUpToDate(Database database) {
    History history = history(database);
    OptionalInt found = history.version();
    found.ifPresent(version -> refuseNewer("store", "in " + database.where(), version));
    if (found.isEmpty() || found.getAsInt() < VERSION || !history.sealed()) {
      Migrations.run(database, VERSION);
    }
  }

  /** Makes the tables as they were at an earlier version, in a store that has none. */
  static void make(Database database, int version) {
    Migrations.run(database, version);
  }

  /**
   * What a store's history says.
   *
   * @param version the last migration that went through; empty for a new store
   * @param sealed whether its rows were sealed after it
   */
  private record History(OptionalInt version, boolean sealed) {}

  private static History history(Database database) {
    try {
      var rows =
          database
              .context()
              .select(
                  field(quotedName("version"), String.class),
                  field(quotedName("description"), String.class))
              .from(table(quotedName("flyway_schema_history")))
              .where(field(quotedName("success"), Boolean.class).isTrue())
              .fetch();
      return new History(
          rows.stream()
              .filter(row -> row.value1() != null)
              .mapToInt(row -> Integer.parseInt(row.value1()))
              .max(),
          rows.stream().anyMatch(row -> SEALED.equals(row.value2())));
    } catch (DataAccessException e) {
      if (NO_SUCH_TABLE.contains(e.sqlState())) {
        return new History(OptionalInt.empty(), false);
      }
      throw e;
    }
  }

  /** Apart, so that a store which is up to date never loads Flyway's classes. */
  private static final class Migrations {
    /** Rows are sealed as they are now, which tables of an earlier version cannot be. */
    private static JavaMigration[] sealing(Database database, int version) {
      return version == VERSION
          ? new JavaMigration[] {new SealRows(database.context().dialect())}
          : new JavaMigration[0];
    }

    static void run(Database database, int version) {
      try {
        Flyway.configure()
            .dataSource(database.pool())
            .locations("classpath:sql")
            .javaMigrations(sealing(database, version))
            .loggers(SilentLog.class.getName())
            .target(String.valueOf(version))
            .load()
            .migrate();
      } catch (FlywayException e) {
        if (e.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
          throw ConflictException.stateForbids(
              "store",
              "in " + database.where(),
              "holds others' tables",
              "name an empty one, or one of this program");
        }
        throw StoreTrouble.toldOr(e, database.where());
      }
    }
  }
}
