package hosewright.store.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hosewright.problem.ConflictException;
import hosewright.problem.TroubleException;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a program that was killed left in a data folder is finished or cleared by the next start.
 */
final class LeftHalfDoneTest {
  @TempDir private Path folder;

  @Test
  void a_restore_onto_a_server_that_was_killed_leaves_no_copy_of_the_books_in_the_folder()
      throws IOException {
    Path ready = Files.createDirectory(folder.resolve(".restoring"));
    Files.writeString(ready.resolve("store.mv.db"), "all the books");

    BooksOn.SERVER.open(folder).close();

    assertThat(folder.toFile().list()).noneMatch(name -> name.startsWith("."));
  }

  @Test
  void files_that_were_being_made_ready_are_thrown_away() throws IOException {
    Path ready = Files.createDirectory(folder.resolve(".restoring"));
    Files.writeString(ready.resolve("store.mv.db"), "half");
    Files.writeString(ready.resolve("terms.txt"), "New terms.");
    Files.writeString(folder.resolve("terms.txt"), "Old terms.");

    Database.open(folder).close();

    assertThat(folder.toFile().list()).noneMatch(name -> name.startsWith("."));
    assertThat(folder.resolve("terms.txt")).hasContent("Old terms.");
  }

  @Test
  void files_that_were_ready_and_decided_on_take_their_places() throws IOException {
    Path ready = Files.createDirectory(folder.resolve(".restored"));
    Database.open(folder.resolve("other")).close();
    // The store had been moved already, the terms not yet.
    Files.move(folder.resolve("other/store.mv.db"), folder.resolve("store.mv.db"));
    Files.writeString(ready.resolve("terms.txt"), "New terms.");
    Files.writeString(folder.resolve("terms.txt"), "Old terms.");

    Database.open(folder).close();

    assertThat(folder.toFile().list()).noneMatch(name -> name.startsWith("."));
    assertThat(folder.resolve("terms.txt")).hasContent("New terms.");
  }

  @Test
  void nothing_but_books_and_the_dealers_files_comes_out_of_such_a_folder() throws IOException {
    Path ready = Files.createDirectory(folder.resolve(".restored"));
    Files.writeString(ready.resolve("highest-quote-number.txt"), "7");
    Path secret = Files.writeString(folder.resolve("secret"), "mine");
    Files.createSymbolicLink(ready.resolve("terms.txt"), secret);

    Database.open(folder).close();

    assertThat(folder.resolve("highest-quote-number.txt")).doesNotExist();
    assertThat(folder.resolve("terms.txt")).doesNotExist();
    assertThat(secret).hasContent("mine");
  }

  @Test
  void kits_that_were_ready_take_their_places_beside_those_that_are_there() throws IOException {
    Path ready = Files.createDirectories(folder.resolve(".restored/kits"));
    Files.writeString(ready.resolve("hand-line.txt"), "2 x W-HYD");
    Files.writeString(ready.resolve("NOT A KIT.txt"), "2 x W-HYD");
    Path secret = Files.writeString(folder.resolve("secret"), "mine");
    Files.createSymbolicLink(ready.resolve("linked.txt"), secret);
    Files.createDirectories(folder.resolve("kits"));
    Files.writeString(folder.resolve("kits/engine.txt"), "1 x W-SPAN-1");

    Replacement.clear(folder);

    assertThat(folder.resolve("kits").toFile().list())
        .containsExactlyInAnyOrder("hand-line.txt", "engine.txt");
    assertThat(folder.toFile().list()).noneMatch(name -> name.startsWith("."));
    assertThat(secret).hasContent("mine");
  }

  @Test
  void a_pipe_in_the_place_of_what_was_left_is_told_and_not_waited_for()
      throws IOException, InterruptedException {
    Path pipe = folder.resolve(".hosewright-unfinished-1");
    assumeTrue(
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0,
        "this system has no pipes with a name");

    assertThatThrownBy(() -> Replacement.clear(folder))
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("no file, but a folder, pipe or device");
  }

  @Test
  void what_another_program_is_still_doing_is_left_alone() throws IOException {
    try (Replacement ready = Replacement.in(folder)) {
      Files.writeString(ready.folder().resolve("terms.txt"), "New terms.");

      Database.open(folder).close();

      assertThat(ready.folder().resolve("terms.txt")).exists();
      assertThatThrownBy(() -> Replacement.in(folder)).isInstanceOf(ConflictException.class);
      ready.putInPlace();
    }
    assertThat(folder.resolve("terms.txt")).hasContent("New terms.");
  }

  @Test
  void a_backup_that_was_never_finished_is_cleared_and_one_being_written_is_not()
      throws IOException {
    Path backups = Files.createDirectory(DataFolder.backups(folder));
    Path left = Files.writeString(backups.resolve(".hosewright-unfinished-1"), "half");
    try (UnfinishedFile writing = UnfinishedFile.in(backups)) {
      assertThat(left).doesNotExist();
      Files.writeString(left, "half");

      Database.open(folder).close();

      assertThat(left).doesNotExist();
      assertThat(writing.file()).exists();
      writing.out().write(1);
      writing.finish(backups.resolve("monday.zip"));
    }
    assertThat(backups.toFile().list()).containsExactly("monday.zip");
  }
}
