package hosewright.store;

import hosewright.problem.BadInputException;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;
import org.h2.api.ErrorCode;
import org.h2.jdbcx.JdbcConnectionPool;
import org.h2.jdbcx.JdbcDataSource;
import org.jooq.DSLContext;
import org.jooq.Log;
import org.jooq.SQLDialect;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.jooq.tools.JooqLogger;

/**
 * The embedded database in a data folder, its schema up to date. One process at a time owns it.
 *
 * <p>Threads of that process may use it at once.
 */
public final class Database implements AutoCloseable {
  /** How long to wait while another process, such as a script's previous command, ends. */
  static final Duration PATIENCE = Duration.ofSeconds(10);

  private static final long RETRY_MILLIS = 50;
  private static final int CONNECTIONS = 32;

  static {
    // jOOQ greets and talks about versions on its logger; a command's output is the user's.
    JooqLogger.globalThreshold(Log.Level.ERROR);
  }

  private final Path folder;
  private final JdbcConnectionPool pool;
  private final DSLContext context;

  private Database(Path folder, JdbcConnectionPool pool) {
    this(folder, pool, DSL.using(pool, SQLDialect.H2, settings()));
  }

  private Database(Path folder, JdbcConnectionPool pool, DSLContext context) {
    this.folder = folder;
    this.pool = pool;
    this.context = context;
  }

  /**
   * Opens the store of a data folder, making both if they are not there yet.
   *
   * @throws BadInputException when the folder cannot be used, another process keeps the store open,
   *     or a newer version of this program wrote it
   */
  public static Database open(Path dataFolder) {
    return open(dataFolder, PATIENCE);
  }

  /**
   * The same, with another limit to waiting for a process that has the store open.
   *
   * @param patience zero to be told at once
   */
  public static Database open(Path dataFolder, Duration patience) {
    Path folder = usable(dataFolder);
    JdbcDataSource source = new JdbcDataSource();
    // WRITE_DELAY=0: a quote whose number has been told to somebody must survive a power cut.
    source.setURL(
        "jdbc:h2:file:%s;LOCK_TIMEOUT=20000;WRITE_DELAY=0;TRACE_LEVEL_FILE=0"
            .formatted(folder.resolve("store")));
    source.setUser("sa");
    source.setPassword("");
    // Held until the pool has a connection of its own: the store closes with its last one.
    try (Connection held = awaitTurn(source, folder, Instant.now().plus(patience))) {
      JdbcConnectionPool pool = JdbcConnectionPool.create(source);
      pool.setMaxConnections(CONNECTIONS);
      Database database = new Database(folder, pool);
      bringUpToDate(database);
      return database;
    } catch (SQLException e) {
      throw unreadable(folder, e);
    }
  }

  private static void bringUpToDate(Database database) {
    try {
      Schema.bringUpToDate(database);
    } catch (RuntimeException e) {
      database.close();
      throw e;
    }
  }

  /**
   * Does several things as one: all are kept, or none when one of them fails.
   *
   * @param work gets the database to do them through; it must not be closed or kept
   */
  public void together(Consumer<Database> work) {
    context.transaction(nested -> work.accept(new Database(folder, pool, nested.dsl())));
  }

  /** Writes a zip with the store as it is at this moment, while others may go on using it. */
  void copyTo(Path zip) {
    context.execute("BACKUP TO {0}", DSL.inline(zip.toString()));
  }

  /** The data folder. */
  public Path folder() {
    return folder;
  }

  DSLContext context() {
    return context;
  }

  JdbcConnectionPool pool() {
    return pool;
  }

  @Override
  public void close() {
    pool.dispose();
  }

  private static Path usable(Path dataFolder) {
    Path folder = dataFolder.toAbsolutePath().normalize();
    if (folder.toString().contains(";")) {
      throw new BadInputException("data folder", folder.toString(), "a path without semicolons");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new BadInputException(
          "data folder", folder.toString(), "a folder that can be made or is there already");
    }
    if (!Files.isWritable(folder)) {
      throw new BadInputException(
          "data folder", folder.toString(), "a folder that may be written to");
    }
    return folder;
  }

  private static Connection awaitTurn(JdbcDataSource source, Path folder, Instant deadline) {
    while (true) {
      try {
        return source.getConnection();
      } catch (SQLException e) {
        if (e.getErrorCode() != ErrorCode.DATABASE_ALREADY_OPEN_1) {
          throw unreadable(folder, e);
        }
        if (!Instant.now().isBefore(deadline)) {
          throw new BadInputException(
              "data folder",
              folder.toString(),
              "another hosewright has this store open: close it or wait until it is done, or name"
                  + " another data folder");
        }
      }
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(RETRY_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for the store", e);
    }
  }

  private static RuntimeException unreadable(Path folder, SQLException e) {
    return switch (e.getErrorCode()) {
      case ErrorCode.FILE_CORRUPTED_1,
          ErrorCode.FILE_VERSION_ERROR_1,
          ErrorCode.WRONG_USER_OR_PASSWORD ->
          damaged(folder);
      case ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2, ErrorCode.FILE_CREATION_FAILED_1 ->
          endsTooSoon(e)
              ? damaged(folder)
              : new BadInputException(
                  "data folder",
                  folder.toString(),
                  "a folder whose file store.mv.db may be read and written");
      default -> new IllegalStateException("cannot open the store in " + folder, e);
    };
  }

  /** H2 reports a file cut short as one that cannot be read. */
  private static boolean endsTooSoon(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof EOFException) {
        return true;
      }
    }
    return false;
  }

  private static DamagedStoreException damaged(Path folder) {
    return new DamagedStoreException(
        folder,
        new Backup(folder, Instant.now())
            .last()
            .map(last -> ", the last one with: data restore " + last)
            .orElse(""));
  }

  /** Names go out unquoted, so that the same code runs where upper case is not the rule. */
  private static Settings settings() {
    return new Settings()
        .withRenderSchema(false)
        .withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED)
        .withExecuteLogging(false);
  }
}
