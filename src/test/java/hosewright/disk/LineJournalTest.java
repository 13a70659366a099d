package hosewright.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LineJournalTest {
  private static final List<String> LINES = List.of("first", "", "2½ NH, \"quoted\"", "last");

  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("run.journal");
  }

  private List<String> opened() {
    List<String> kept = new ArrayList<>();
    LineJournal.open(file(), kept::add).close();
    return kept;
  }

  private byte[] written() throws IOException {
    try (LineJournal journal = LineJournal.open(file(), line -> {})) {
      LINES.forEach(journal::append);
      journal.force();
    }
    return Files.readAllBytes(file());
  }

  @Test
  void a_link_in_the_place_of_a_journal_is_refused_and_what_it_points_at_left_alone()
      throws IOException {
    Path theirs = Files.writeString(folder.resolve("theirs.txt"), "theirs");
    Files.createSymbolicLink(file(), theirs);

    assertThatThrownBy(() -> LineJournal.open(file(), line -> {}))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("a link lies there");
    assertThat(theirs).hasContent("theirs");
  }

  @Test
  void wherever_the_file_is_cut_the_whole_lines_before_the_cut_are_kept_and_no_other()
      throws IOException {
    byte[] whole = written();
    int kept = 0;
    for (int length = 0; length <= whole.length; length++) {
      if (length > 0 && whole[length - 1] == '\n') {
        kept++;
      }
      Files.write(file(), Arrays.copyOf(whole, length));
      assertThat(opened()).as("cut at %s", length).isEqualTo(LINES.subList(0, kept));
    }
    assertThat(kept).isEqualTo(LINES.size());
  }

  @Test
  void a_spoiled_byte_drops_its_line_and_all_behind_it() throws IOException {
    byte[] whole = written();
    int second = new String(whole, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf('\n') + 1;
    for (int place = second; place < whole.length; place++) {
      byte[] spoiled = whole.clone();
      spoiled[place] ^= 1;
      Files.write(file(), spoiled);
      List<String> kept = opened();
      assertThat(kept).as("byte %s", place).isEqualTo(LINES.subList(0, kept.size()));
      assertThat(kept.size()).as("byte %s", place).isLessThan(LINES.size());
    }
  }

  @Test
  void after_a_cut_the_journal_goes_on_behind_the_last_whole_line() throws IOException {
    byte[] whole = written();
    Files.write(file(), Arrays.copyOf(whole, whole.length - 3));
    try (LineJournal journal = LineJournal.open(file(), line -> {})) {
      journal.append("again");
    }
    assertThat(opened()).containsExactly("first", "", "2½ NH, \"quoted\"", "again");
  }

  @Test
  void two_runs_cannot_write_one_journal() throws IOException {
    try (LineJournal journal = LineJournal.open(file(), line -> {})) {
      assertThatThrownBy(() -> LineJournal.open(file(), line -> {}))
          .isInstanceOf(ConflictException.class)
          .hasMessageContaining("another run");
      journal.append("still mine");
    }
    assertThat(opened()).containsExactly("still mine");
  }
}
