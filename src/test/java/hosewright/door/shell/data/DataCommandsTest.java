package hosewright.door.shell.data;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.quote.QuoteListCommand;
import hosewright.door.shell.quote.QuoteMakeCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import hosewright.store.database.Database;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books are copied, lost and put back. */
final class DataCommandsTest {
  @TempDir private Path data;
  @TempDir private Path elsewhere;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    OpenDesk.putDemoInto(data);
    shell =
        CommandTrial.of(
            data,
            trial ->
                List.of(
                    new DataBackupCommand(DemoBooks.of(trial)),
                    new DataCheckCommand(trial.workspace()),
                    new DataRestoreCommand(DemoBooks.of(trial)),
                    new DataWhereCommand(trial.workspace()),
                    new QuoteListCommand(DemoBooks.of(trial)),
                    new QuoteMakeCommand(DemoBooks.of(trial))));
  }

  private String quote() {
    return shell
        .run(
            "quote",
            "make",
            "--job",
            "quotes/hydrant-to-nozzle.yaml",
            "--customer",
            "COUNTER",
            "--size",
            "1.75in",
            "--hose-thread",
            "NH",
            "--json")
        .json()
        .get("number")
        .asString();
  }

  private int quotesOnFile() {
    return shell.run("quote", "list", "--json").json().get("quotes").size();
  }

  @Test
  void what_was_quoted_before_a_backup_is_there_after_it_is_put_back() {
    assertThat(quote()).isEqualTo("Q-000001");
    Path backup = elsewhere.resolve("monday.zip");
    assertThat(shell.run("data", "backup", backup.toString()).exitCode()).isZero();
    assertThat(quote()).isEqualTo("Q-000002");

    Ended restored = shell.run("data", "restore", backup.toString(), "--json");

    assertThat(restored.exitCode()).isZero();
    assertThat(quotesOnFile()).isEqualTo(1);
    // A customer may hold Q-000002 on paper, so it is never given to another quote.
    assertThat(quote()).isEqualTo("Q-000003");
    // What stood there before went into a backup of its own.
    String before = restored.json().get("before").asString();
    assertThat(shell.run("data", "restore", before).exitCode()).isZero();
    assertThat(quotesOnFile()).isEqualTo(2);
  }

  @Test
  void what_the_dealer_wrote_beside_the_store_goes_along_and_comes_back() throws IOException {
    Files.writeString(data.resolve("local-threads.csv"), "register");
    Files.writeString(data.resolve("terms.txt"), "Goods stay ours until paid.\n");
    String backup = elsewhere.resolve("monday.zip").toString();
    assertThat(shell.run("data", "backup", backup).exitCode()).isZero();
    Files.delete(data.resolve("local-threads.csv"));
    Files.writeString(data.resolve("terms.txt"), "Something else.\n");

    assertThat(shell.run("data", "restore", backup).exitCode()).isZero();

    assertThat(data.resolve("local-threads.csv")).hasContent("register");
    assertThat(data.resolve("terms.txt")).hasContent("Goods stay ours until paid.\n");
  }

  @Test
  void a_check_reads_everything_and_says_that_it_is_sound() {
    quote();

    Ended check = shell.run("data", "check");

    assertThat(check.exitCode()).isZero();
    assertThat(check.out()).containsPattern("Read [0-9,]+ rows: all of them read as they were");
    assertThat(check.out()).doesNotContain("changed since");
  }

  @Test
  void a_check_names_what_is_damaged_and_the_backup_that_would_bring_it_back() {
    String number = quote();
    assertThat(shell.run("data", "backup").exitCode()).isZero();
    String later = quote();
    try (Database books = Database.open(data)) {
      books
          .context()
          .execute("UPDATE QUOTE SET TOTAL = TOTAL + 1 WHERE QUOTE_NUMBER = '" + number + "'");
      books.context().execute("DELETE FROM PRICE WHERE ITEM_NUMBER = 'W-SPAN-1'");
    }

    assertThat(shell.run("quote", "list").err())
        .contains("quote", number + " revision 1", "'data check'");
    Ended check = shell.run("data", "check");

    assertThat(check.exitCode()).isEqualTo(2);
    assertThat(check.out().replaceAll("\\s+", " "))
        .contains(number + " revision", "does not read as it was", "holds it as it was last")
        .contains("would go: quote " + later + " revision 1;");
    // The screen breaks the line before a name as long as that of this folder.
    assertThat(check.out())
        .contains("The last backup was written")
        .containsPattern("'data\\s+restore\\s");
  }

  @Test
  void a_store_put_in_by_hand_is_refused_until_a_check_has_found_it_sound() throws IOException {
    quote();
    Path copy = Files.copy(data.resolve("store.mv.db"), elsewhere.resolve("kept"));
    quote();
    Files.copy(copy, data.resolve("store.mv.db"), StandardCopyOption.REPLACE_EXISTING);

    assertThat(shell.run("quote", "list").err()).contains("store.mv.db", "'data check'");
    assertThat(shell.run("data", "check").out()).contains("it is taken as it is now");
    assertThat(quotesOnFile()).isEqualTo(1);
  }

  @Test
  void a_backup_is_never_written_over() throws IOException {
    Path there = Files.writeString(elsewhere.resolve("there.zip"), "mine");

    Ended ended = shell.run("data", "backup", there.toString());

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("never replaced");
    assertThat(there).hasContent("mine");
    assertThat(elsewhere.toFile().list()).containsExactly("there.zip");
  }

  @Test
  void what_is_no_backup_is_refused_and_the_books_stay() throws IOException {
    quote();
    Path text = Files.writeString(elsewhere.resolve("text.zip"), "not a zip");
    Path other = zip("other.zip", "../../escape.txt");
    Path broken = zip("broken.zip", "store.mv.db");

    for (Path file : List.of(text, other, broken, elsewhere.resolve("absent.zip"))) {
      Ended ended = shell.run("data", "restore", file.toString());
      assertThat(ended.exitCode()).as(file.toString()).isEqualTo(2);
      assertThat(ended.err()).contains("backup");
    }

    assertThat(quotesOnFile()).isEqualTo(1);
    assertThat(data.toFile().list()).noneMatch(name -> name.startsWith(".restore"));
  }

  @Test
  void damaged_books_name_the_last_backup_and_can_be_put_back_from_it() throws IOException {
    quote();
    shell.run("data", "backup");
    Files.writeString(data.resolve("store.mv.db"), "no store");

    Ended ended = shell.run("quote", "list");

    assertThat(ended.exitCode()).isEqualTo(2);
    String backup = shell.run("data", "where", "--json").json().get("lastBackup").asString();
    assertThat(ended.err()).contains("damaged").contains("data restore " + backup);
    assertThat(shell.run("data", "restore", backup).exitCode()).isZero();
    assertThat(quotesOnFile()).isEqualTo(1);
  }

  private Path zip(String name, String entry) throws IOException {
    Path file = elsewhere.resolve(name);
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(entry));
      zip.write(new byte[] {1, 2, 3});
    }
    return file;
  }
}
