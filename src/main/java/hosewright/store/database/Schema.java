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
import org.jooq.exception.DataAccessException;

/** Sees to it that a store has the tables this version of the program works with. */
public final class Schema {
  /** Number of the last migration in {@code sql/}. */
  public static final int VERSION = 9;

  /** As the embedded store and the server say it. */
  private static final Set<String> NO_SUCH_TABLE = Set.of("42S02", "42S04", "42P01");

  private Schema() {}

  /**
   * Runs the migrations a store lacks. A store that has them all is left alone without loading
   * Flyway, which would take longer than most commands.
   */
  static void bringUpToDate(Database database) {
    OptionalInt found = version(database);
    if (found.isPresent() && found.getAsInt() > VERSION) {
      throw ConflictException.stateForbids(
          "store",
          "in " + database.where(),
          "was written by a newer version of this program (schema %s, this one knows %s)"
              .formatted(found.getAsInt(), VERSION),
          "use that one");
    }
    if (found.isEmpty() || found.getAsInt() < VERSION) {
      Migrations.run(database, VERSION);
    }
  }

  /** Makes the tables as they were at an earlier version, in a store that has none. */
  static void make(Database database, int version) {
    Migrations.run(database, version);
  }

  /** The last migration that went through; empty for a new store. */
  private static OptionalInt version(Database database) {
    try {
      return database
          .context()
          .select(field(quotedName("version"), String.class))
          .from(table(quotedName("flyway_schema_history")))
          .where(field(quotedName("success"), Boolean.class).isTrue())
          .fetch()
          .stream()
          .filter(row -> row.value1() != null)
          .mapToInt(row -> Integer.parseInt(row.value1()))
          .max();
    } catch (DataAccessException e) {
      if (NO_SUCH_TABLE.contains(e.sqlState())) {
        return OptionalInt.empty();
      }
      throw e;
    }
  }

  /** Apart, so that a store which is up to date never loads Flyway's classes. */
  private static final class Migrations {
    static void run(Database database, int version) {
      try {
        Flyway.configure()
            .dataSource(database.pool())
            .locations("classpath:sql")
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
        throw StoreTrouble.of(e, database.where()).map(RuntimeException.class::cast).orElse(e);
      }
    }
  }
}
