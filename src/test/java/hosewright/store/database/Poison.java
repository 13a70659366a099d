package hosewright.store.database;

import hosewright.store.seal.FileSum;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** Ways to hide something that runs in a database file of the embedded store. */
public enum Poison {
  TRIGGER_WITH_SOURCE(
      """
      CREATE TRIGGER COUNTED BEFORE INSERT ON QUOTE AS '
      org.h2.api.Trigger create() throws Exception {
        java.nio.file.Files.writeString(java.nio.file.Path.of("%s"), "ran");
        return (connection, before, after) -> {};
      }'\
      """),

  ALIAS_WITH_SOURCE(
      """
      CREATE ALIAS COUNTED AS '
      int counted() throws Exception {
        java.nio.file.Files.writeString(java.nio.file.Path.of("%s"), "ran");
        return 1;
      }'\
      """,
      "CREATE CONSTANT COUNTS VALUE COUNTED()"),

  /** The table that is asked first of all which version the store has. */
  VIEW_OVER_FILES(
      "ALTER TABLE \"flyway_schema_history\" RENAME TO HISTORY",
      """
      CREATE VIEW "flyway_schema_history" AS
      SELECT H.* FROM HISTORY H WHERE FILE_WRITE('ran', '%s') > 0\
      """),

  CONSTANT("CREATE CONSTANT COUNTS VALUE FILE_WRITE('ran', '%s')"),

  LINKED_TABLE(
      """
      CREATE LINKED TABLE ELSEWHERE('org.h2.Driver',
        'jdbc:h2:mem:elsewhere;INIT=CALL FILE_WRITE(''ran'', ''%s'')\\;CREATE TABLE IF NOT EXISTS T(A INT)',
        'sa', '', 'T')\
      """),

  TABLE_ENGINE("CREATE TABLE EXTRA(A INT) ENGINE \"hosewright.store.database.CanaryEngine\""),

  TRIGGER_OF_A_CLASS(
      "CREATE TRIGGER COUNTED BEFORE INSERT ON QUOTE CALL"
          + " 'hosewright.store.database.CanaryTrigger'"),

  DOMAIN("CREATE DOMAIN COUNTED AS INT DEFAULT FILE_WRITE('ran', '%s')"),

  DEFAULT_EXPRESSION(
      "ALTER TABLE DEALER_SETTING ADD COLUMN EXTRA BIGINT DEFAULT FILE_WRITE('ran', '%s')"),

  CHECK_EXPRESSION(
      "ALTER TABLE DEALER_SETTING ADD CONSTRAINT EXTRA CHECK (FILE_WRITE('ran', '%s') > 0)"),

  GENERATED_COLUMN(
      """
      ALTER TABLE DEALER_SETTING
      ADD COLUMN EXTRA BIGINT GENERATED ALWAYS AS (FILE_WRITE('ran', '%s'))\
      """),

  SCRIPT_IN_A_NAME("CREATE TABLE \"X(A INT)\\; CALL FILE_WRITE('ran', '%s')\\; --\"(A INT)"),

  ANOTHER_USER("CREATE USER GUEST PASSWORD 'guest' ADMIN"),

  ROLE("CREATE ROLE GUESTS"),

  SEQUENCE("CREATE SEQUENCE COUNTED"),

  SETTING("SET DEFAULT_LOCK_TIMEOUT 5"),

  ANOTHER_SCHEMA("CREATE SCHEMA EXTRA");

  private final List<String> statements;

  Poison(String... statements) {
    this.statements = List.of(statements);
  }

  /**
   * Puts it into a store that nobody has open, as somebody with a database tool would: in a process
   * of its own, since ours forbids the embedded store what such tools allow.
   */
  public void into(Path folder, Path canary) {
    try {
      Tool.shared().poison(this, folder, canary);
      Files.deleteIfExists(canary);
      // Whoever hands over a folder leaves out what says how its store was left, or makes it fit.
      Files.deleteIfExists(folder.resolve(FileSum.NAME));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The process of somebody with a database tool, started once and ending with ours. */
  private static final class Tool {
    private static final String DONE = "done";

    private static Tool running;

    private final PrintStream told;
    private final BufferedReader said;

    private Tool(Process process) {
      told = new PrintStream(process.getOutputStream(), true, StandardCharsets.UTF_8);
      said = process.inputReader(StandardCharsets.UTF_8);
    }

    static synchronized Tool shared() throws IOException {
      if (running == null) {
        running =
            new Tool(
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Poison.class.getName())
                    .redirectErrorStream(true)
                    .start());
      }
      return running;
    }

    synchronized void poison(Poison poison, Path folder, Path canary) throws IOException {
      told.println(String.join("\t", poison.name(), folder.toString(), canary.toString()));
      StringBuilder other = new StringBuilder();
      for (String line = said.readLine(); !DONE.equals(line); line = said.readLine()) {
        if (line == null) {
          throw new IllegalStateException(poison + ": " + other);
        }
        other.append(line).append('\n');
      }
    }
  }

  /** Reads lines: which poison, the folder of the store, the canary. The first fault ends it. */
  public static void main(String[] args) throws Exception {
    BufferedReader asked =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String line = asked.readLine(); line != null; line = asked.readLine()) {
      String[] words = line.split("\t");
      valueOf(words[0]).intoStore(words[1], words[2]);
      System.out.println(Tool.DONE);
    }
  }

  private void intoStore(String folder, String canary) throws SQLException {
    CanaryEngine.watched(Path.of(canary));
    try (Connection connection =
            DriverManager.getConnection("jdbc:h2:file:" + folder + "/store", "sa", "");
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql.formatted(canary).replace("\\;", this == LINKED_TABLE ? "\\;" : ";"));
      }
    }
  }
}
