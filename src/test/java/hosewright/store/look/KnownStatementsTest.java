package hosewright.store.look;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.store.database.Database;
import hosewright.store.database.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of what our migrations make is the list of what they make. */
final class KnownStatementsTest {
  private static final Path LIST =
      Path.of("src/main/resources/hosewright/store/look/known-statements.txt");

  /** After a new migration: copy this file over the list, and read what it adds. */
  private static final Path MADE = Path.of("target/known-statements.txt");

  @TempDir private Path folder;

  @Test
  void every_statement_of_every_version_and_no_other_is_known() throws Exception {
    Set<String> made = new TreeSet<>();
    for (int version : versions()) {
      Path store = Files.createDirectory(folder.resolve("version" + version));
      Database.fresh(store, version).close();
      Set<String> foreign = new TreeSet<>();
      for (String statement : StoreLook.statements(store.resolve("store.mv.db"), foreign)) {
        made.add(KnownStatements.plain(statement));
      }
      assertThat(foreign).isEmpty();
    }
    write(made);

    assertThat(LIST).hasSameTextualContentAs(MADE);
  }

  /** A number may be left out: two who add a migration at the same time each take one. */
  private static List<Integer> versions() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sql"))) {
      List<Integer> versions =
          files
              .map(file -> Integer.parseInt(("" + file.getFileName()).replaceAll("V|__.*", "")))
              .sorted()
              .toList();
      assertThat(versions).endsWith(Schema.VERSION);
      return versions;
    }
  }

  private static void write(Set<String> made) throws IOException {
    Files.writeString(MADE, String.join("\n", made) + "\n");
  }
}
