package hosewright.store.database;

import hosewright.disk.OwnerOnly;
import hosewright.problem.BadInputException;
import hosewright.problem.TroubleException;
import hosewright.store.folder.DataFolder;
import hosewright.store.look.StoreLook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.h2.api.ErrorCode;
import org.h2.jdbcx.JdbcConnectionPool;
import org.h2.jdbcx.JdbcDataSource;

/** Connections to the embedded store in a data folder, which one process at a time owns. */
final class EmbeddedPool {
  private static final long RETRY_MILLIS = 50;
  private static final String ALLOWED_CLASSES = "h2.allowedClasses";

  /** The stores this process has open. */
  private static final Map<JdbcConnectionPool, Path> OPEN = new HashMap<>();

  static {
    // Before H2 reads it: no class named in a store is loaded, whatever else may fail.
    if (System.getProperty(ALLOWED_CLASSES) == null) {
      System.setProperty(ALLOWED_CLASSES, "");
    }
  }

  private EmbeddedPool() {}

  /**
   * Opens the store, making it if it is not there yet.
   *
   * @param folder one that may be written to
   * @param patience how long to wait for a process that has the store open
   * @throws BadInputException when the store is damaged, cannot be written or stays taken
   */
  static JdbcConnectionPool open(Path folder, Duration patience) {
    // One at a time: looking at a file that this process has open would let go of its lock on it.
    synchronized (OPEN) {
      Instant deadline = Instant.now().plus(patience);
      Path store = folder.resolve(DataFolder.STORE);
      makeForOwner(store);
      if (!OPEN.containsValue(store)) {
        look(folder, store, deadline);
      }
      JdbcConnectionPool pool = open(folder, deadline);
      OPEN.put(pool, store);
      return pool;
    }
  }

  /** To be told of a pool that is closed, ours or another's. */
  static void closed(JdbcConnectionPool pool) {
    synchronized (OPEN) {
      OPEN.remove(pool);
    }
  }

  /** Sees to it that the file holds nothing but what our migrations made, before H2 runs it. */
  private static void look(Path folder, Path store, Instant deadline) {
    Damage damage = new Damage(folder);
    while (true) {
      try {
        if (Files.size(store) > 0) {
          Set<String> foreign = StoreLook.foreign(store);
          if (!foreign.isEmpty()) {
            throw new ForeignStoreException(folder, foreign);
          }
        }
        return;
      } catch (StoreLook.Taken e) {
        if (!Instant.now().isBefore(deadline)) {
          throw taken(folder);
        }
      } catch (IOException e) {
        throw notReadAndWritten(folder);
      } catch (ForeignStoreException e) {
        throw e;
      } catch (RuntimeException e) {
        // Whatever its pages made the reader stumble over.
        throw Files.isReadable(store) ? damage.told() : notReadAndWritten(folder);
      }
      pause();
    }
  }

  private static JdbcConnectionPool open(Path folder, Instant deadline) {
    JdbcDataSource source = new JdbcDataSource();
    source.setURL(
        "jdbc:h2:file:%s;LOCK_TIMEOUT=20000;TRACE_LEVEL_FILE=0".formatted(folder.resolve("store")));
    source.setUser("sa");
    source.setPassword("");
    // Held until the pool has a connection of its own: the store closes with its last one.
    try (Connection held = awaitTurn(source, folder, deadline)) {
      JdbcConnectionPool pool = JdbcConnectionPool.create(source);
      pool.getConnection().close();
      return pool;
    } catch (SQLException e) {
      throw unreadable(folder, e);
    }
  }

  /** H2 takes an empty file for a store that is yet to be made. */
  private static void makeForOwner(Path store) {
    if (Files.exists(store)) {
      return;
    }
    try {
      OwnerOnly.file(store);
    } catch (IOException e) {
      throw notReadAndWritten(store.getParent());
    }
  }

  private static TroubleException notReadAndWritten(Path folder) {
    return new TroubleException(
        "data folder",
        folder.toString(),
        "its file store.mv.db may not be read and written",
        TroubleException.Kept.NOTHING);
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
          throw taken(folder);
        }
      }
      pause();
    }
  }

  private static TroubleException taken(Path folder) {
    return new TroubleException(
        "data folder",
        folder.toString(),
        "another hosewright has this store open: close it or wait until it is done, or name"
            + " another data folder",
        TroubleException.Kept.NOTHING);
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
    Damage damage = new Damage(folder);
    return switch (e.getErrorCode()) {
      // Nobody sets a password: the page that holds the users is not ours.
      case ErrorCode.WRONG_USER_OR_PASSWORD -> damage.told();
      // H2 reports a file cut short as one that cannot be read.
      case ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2, ErrorCode.FILE_CREATION_FAILED_1 ->
          damage.of(e).map(RuntimeException.class::cast).orElseGet(() -> notReadAndWritten(folder));
      // No statement of ours has run yet: what H2 stumbles over is the file.
      default ->
          StoreTrouble.of(e, "data folder " + folder)
              .map(RuntimeException.class::cast)
              .orElseGet(damage::told);
    };
  }
}
