package hosewright.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class CsvFileTest {
  private final List<Problem> problems = new ArrayList<>();

  @Test
  void columns_may_stand_in_any_order() {
    CsvFile file = read("value,key\nQuillback,name\n");

    assertThat(problems).isEmpty();
    assertThat(file.rows()).singleElement().satisfies(row -> is(row, "name", "Quillback"));
  }

  @Test
  void a_row_knows_the_line_it_begins_on_though_cells_hold_line_breaks_and_lines_are_empty() {
    CsvFile file = read("key,value\r\na,\"1\r\n2\"\r\n\r\n,\r\nb,3");

    assertThat(file.rows()).extracting(CsvRow::line).containsExactly(2L, 6L);
    assertThat(file.rows().get(0).cell("value")).isEqualTo("1\r\n2");
  }

  @Test
  void a_byte_order_mark_is_no_part_of_the_first_column() {
    // RFC 3629 section 6: EF BB BF is the UTF-8 signature.
    byte[] bytes = "\uFEFFkey,value\na,Zürich\n".getBytes(StandardCharsets.UTF_8);
    assertThat(bytes).startsWith(0xEF, 0xBB, 0xBF);

    CsvFile file = read(bytes);

    assertThat(problems).isEmpty();
    assertThat(file.rows()).singleElement().satisfies(row -> is(row, "a", "Zürich"));
  }

  @Test
  void text_in_another_encoding_is_refused_instead_of_losing_letters() {
    for (Charset charset : List.of(StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16)) {
      problems.clear();

      CsvFile file = read("key,value\na,Zürich\n".getBytes(charset));

      assertThat(file.understood()).isFalse();
      assertThat(problems)
          .singleElement()
          .extracting(Problem::sentence)
          .isEqualTo("test.csv cannot be 'bytes that are not UTF-8': text saved as CSV UTF-8.");
    }
  }

  @Test
  void an_unknown_column_is_named_with_the_one_that_was_meant() {
    CsvFile file = read("key,valeu\na,b\n");

    assertThat(file.understood()).isFalse();
    assertThat(problems)
        .containsExactly(
            new Problem("test.csv header", "valeu", "the columns are key,value", "value"),
            Problem.of("test.csv column value", "", "the header must name it"));
  }

  @Test
  void a_column_stands_once() {
    read("key,value,key\na,b,c\n");

    assertThat(problems)
        .containsExactly(Problem.of("test.csv header", "key", "each column stands once"));
  }

  @Test
  void semicolons_between_columns_are_told_apart_from_missing_columns() {
    read("key;value\na;b\n");

    assertThat(problems)
        .containsExactly(
            Problem.of("test.csv header", "key;value", "columns are separated by commas"));
  }

  @Test
  void an_empty_file_and_a_missing_file_are_refused() {
    read("");
    CsvFile.read(Map.of(), "absent.csv", List.of("key", "value"), problems);

    assertThat(problems)
        .containsExactly(
            Problem.of("test.csv", "", "a header line key,value"),
            Problem.of("absent.csv", "", "a file with at least the header line key,value"));
  }

  @Test
  void a_row_with_more_or_fewer_cells_than_the_header_is_refused_and_the_others_are_read() {
    CsvFile file = read("key,value\na,b,c\nd\ne,f\n");

    assertThat(problems)
        .extracting(Problem::field)
        .containsExactly("test.csv line 2", "test.csv line 3");
    assertThat(file.rows()).singleElement().satisfies(row -> is(row, "e", "f"));
  }

  @Test
  void a_quote_that_never_ends_is_named() {
    read("key,value\na,\"b\n");

    assertThat(problems).singleElement().extracting(Problem::field).isEqualTo("test.csv");
  }

  @Test
  void a_cell_that_never_ends_is_given_up_before_it_fills_memory() {
    for (String beginning : List.of("key,value\na,\"", "key,value\na,", "")) {
      problems.clear();

      read(new Endless(beginning));

      assertThat(problems)
          .singleElement()
          .extracting(Problem::sentence)
          .isEqualTo(
              "test.csv cannot be 'something longer': rows of at most 262144 characters; is a"
                  + " double quote not closed?.");
    }
  }

  @Test
  void a_heading_without_end_is_refused_once_and_not_cell_by_cell() {
    read("x,".repeat(100_000) + "\n");

    assertThat(problems)
        .containsExactly(Problem.of("test.csv header", "100001 columns", "at most 1000"));
  }

  @Test
  void a_cell_with_a_hidden_mark_is_refused_with_its_place_and_the_rest_is_read() {
    CsvFile file = read("key,value\na,b\u202E1.00\nc,d\n");

    assertThat(problems)
        .containsExactly(
            new Problem(
                "test.csv line 2 column value", "b{U+202E}1.00", PlainText.ALLOWED, "b1.00"));
    assertThat(file.rows()).extracting(CsvRow::sound).containsExactly(false, true);
  }

  @Test
  void a_file_that_cannot_be_read_to_its_end_is_refused() {
    read(
        new Reader() {
          @Override
          public int read(char[] into, int offset, int length) throws IOException {
            throw new IOException("Is a directory");
          }

          @Override
          public void close() {}
        });

    assertThat(problems).extracting(Problem::field).containsExactly("test.csv");
  }

  @Test
  void a_header_alone_is_a_file_without_rows() {
    CsvFile file = read("key,value\n");

    assertThat(problems).isEmpty();
    assertThat(file.understood()).isTrue();
    assertThat(file.rows()).isEmpty();
  }

  /** Letters without end behind a beginning. */
  private static final class Endless extends Reader {
    private final StringReader beginning;

    Endless(String beginning) {
      this.beginning = new StringReader(beginning);
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
      int begun = beginning.read(into, offset, length);
      if (begun > 0) {
        return begun;
      }
      Arrays.fill(into, offset, offset + length, 'x');
      return length;
    }

    @Override
    public void close() {}
  }

  private CsvFile read(String text) {
    return read(new StringReader(text));
  }

  private CsvFile read(byte[] bytes) {
    return read(CsvFile.utf8(new ByteArrayInputStream(bytes)));
  }

  private CsvFile read(Reader text) {
    return CsvFile.read(Map.of("test.csv", text), "test.csv", List.of("key", "value"), problems);
  }

  private static void is(CsvRow row, String key, String value) {
    assertThat(row.cell("key")).isEqualTo(key);
    assertThat(row.cell("value")).isEqualTo(value);
  }
}
