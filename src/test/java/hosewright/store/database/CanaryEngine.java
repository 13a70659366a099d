package hosewright.store.database;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.api.TableEngine;
import org.h2.command.ddl.CreateTableData;
import org.h2.table.Table;

/** Leaves a file where the embedded store is brought to make tables with it. */
public final class CanaryEngine implements TableEngine {
  private static volatile Path canary;

  /** Where the file will be. */
  static void watched(Path file) {
    canary = file;
  }

  static void sing() {
    try {
      Files.writeString(canary, "ran");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Table createTable(CreateTableData data) {
    sing();
    return data.schema.getDatabase().getStore().createTable(data);
  }
}
