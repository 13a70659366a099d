package hosewright.store.database;

import hosewright.store.seal.FileSum;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;

/** Where the books of a test are kept; each data folder has books of its own. */
public enum BooksOn {
  EMBEDDED {
    @Override
    public Database open(Path folder) {
      if (!Files.exists(folder.resolve("store.mv.db"))) {
        MigratedStore.into(folder);
      }
      return Database.open(folder);
    }

    @Override
    public void backUp(Path folder) {
      copy(folder.resolve("store.mv.db"), folder.resolve("backup"));
    }

    @Override
    public void putBack(Path folder) {
      copy(folder.resolve("backup"), folder.resolve("store.mv.db"));
      FileSum.of(folder.resolve("store.mv.db")).forget();
    }
  },

  SERVER {
    @Override
    public Database open(Path folder) {
      return Database.open(PostgresCluster.shared().server(database(folder)), folder);
    }

    @Override
    public void backUp(Path folder) {
      PostgresCluster.shared()
          .execute("CREATE DATABASE %1$s_backup TEMPLATE %1$s".formatted(database(folder)));
    }

    @Override
    public void putBack(Path folder) {
      String name = database(folder);
      PostgresCluster.shared().execute("DROP DATABASE " + name);
      PostgresCluster.shared().execute("ALTER DATABASE %1$s_backup RENAME TO %1$s".formatted(name));
    }
  };

  private static final Map<Path, String> DATABASES = new HashMap<>();

  /** The books of a folder, a copy of empty ones when first opened. */
  public abstract Database open(Path folder);

  /** Keeps a copy of books that nobody has open. */
  public abstract void backUp(Path folder);

  /** Puts the copy in the place of the books. */
  public abstract void putBack(Path folder);

  /** The database of a folder, a copy of one whose migrations were run once. */
  public static synchronized String database(Path folder) {
    if (DATABASES.isEmpty()) {
      DATABASES.put(Path.of(""), "migrated");
      PostgresCluster.shared().execute("CREATE DATABASE migrated");
      Database.open(PostgresCluster.shared().server("migrated"), folder).close();
    }
    return DATABASES.computeIfAbsent(
        folder,
        unknown -> {
          String name = "books" + DATABASES.size();
          PostgresCluster.shared().execute("CREATE DATABASE %s TEMPLATE migrated".formatted(name));
          return name;
        });
  }

  private static void copy(Path from, Path to) {
    try {
      Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
