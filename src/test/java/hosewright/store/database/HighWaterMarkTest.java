package hosewright.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.TroubleException;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.store.database.HighWaterMarks.Corrected;
import hosewright.store.database.HighWaterMarks.Step;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mark of the highest number that went wrong is told, and can be set right on the record. */
final class HighWaterMarkTest {
  private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

  @TempDir private Path folder;
  private Database books;
  private Path mark;

  @BeforeEach
  void keep_a_quote() {
    books = BooksOn.EMBEDDED.open(folder);
    mark = folder.resolve("highest-quote-number.txt");
    assertThat(quote()).isEqualTo("Q-000001");
  }

  @AfterEach
  void close() {
    books.close();
  }

  @Test
  void a_mark_far_beyond_the_books_is_named_with_the_command_that_sets_it_right()
      throws IOException {
    Files.writeString(mark, "99999999\n");

    assertThatThrownBy(this::quote)
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining(mark.toString())
        .hasMessageContaining("Q-99999999")
        .hasMessageContaining("the last one here is Q-000001")
        .hasMessageContaining("data mark quote NUMBER --reason WHY");
  }

  @Test
  void a_mark_that_is_no_number_is_named_with_the_same_way_out() throws IOException {
    Files.writeString(mark, "many");

    assertThatThrownBy(this::quote)
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("holds 'many'")
        .hasMessageContaining("data mark quote NUMBER --reason WHY");
  }

  @Test
  void whatever_lies_in_the_place_of_a_mark_is_named_with_the_same_way_out() throws IOException {
    for (byte[] content : List.of(new byte[] {(byte) 0xFF}, new byte[5000], new byte[0])) {
      Files.write(mark, content);
      assertThatThrownBy(this::quote)
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("data mark quote NUMBER --reason WHY")
          .message()
          .satisfies(said -> assertThat(PlainText.is(said)).isTrue());
      set(1, "spoilt on the disk");
    }
    Files.delete(mark);
    Files.createDirectory(mark);
    assertThatThrownBy(this::quote)
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("is a folder, pipe or device");
    assertThatThrownBy(() -> set(1, "spoilt")).isInstanceOf(TroubleException.class);
    Files.delete(mark);
    set(1, "it is mended");
    assertThat(quote()).isEqualTo("Q-000002");
  }

  @Test
  void a_mark_is_set_right_only_where_its_reason_can_be_kept() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "untouched");
    Path log = folder.resolve("number-marks.log");
    Files.createSymbolicLink(log, other);

    assertThatThrownBy(() -> set(7, "why"))
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("a link");
    assertThat(mark).hasContent("1");
    assertThat(other).hasContent("untouched");
  }

  @Test
  void it_is_set_right_with_a_reason_that_is_kept() throws IOException {
    Files.writeString(mark, "99999999\n");

    Corrected done = set(7, "typed\twrong\nby hand");

    assertThat(done.before()).isEqualTo("99999999");
    assertThat(quote()).isEqualTo("Q-000008");
    set(20, "a pad of numbers was found");
    assertThat(quote()).isEqualTo("Q-000021");
    assertThat(Files.readAllLines(done.log()))
        .containsExactly(
            "2026-11-30T12:00:00Z\tines\thighest-quote-number.txt\t99999999\t7\ttyped wrong by"
                + " hand",
            "2026-11-30T12:00:00Z\tines\thighest-quote-number.txt\t8\t20\ta pad of numbers was"
                + " found");
  }

  @Test
  void it_is_never_set_below_a_paper_that_is_there_or_out_of_reach() {
    quote();
    for (int number : new int[] {0, 1, 100_003, 999_999_999}) {
      assertThatThrownBy(() -> set(number, "no"))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining("the last quote number in the books");
    }
    assertThat(mark).hasContent("2");
    assertThat(folder.resolve("number-marks.log")).doesNotExist();
  }

  private Corrected set(int number, String reason) {
    return books
        .marks()
        .setRight(books.context(), Series.QUOTE, number, new Step(NOON, "ines", reason));
  }

  private String quote() {
    Clock clock = Clock.fixed(NOON, ZoneOffset.UTC);
    return new StoredQuotes(books, SampleQuotes.CODEC, clock)
        .saveNew(
            number -> SampleQuotes.quote(number, 1, "Quay line"),
            Signed.of(QuoteLife.Step.MAKE, "ines", NOON, ""))
        .number();
  }
}
