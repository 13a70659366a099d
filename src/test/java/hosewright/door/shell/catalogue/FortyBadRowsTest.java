package hosewright.door.shell.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A file whose every row is bad in a way of its own. */
final class FortyBadRowsTest {
  private static final Path FOLDER =
      Path.of("src/test/resources/hosewright/catalogue/forty-bad-rows");

  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell =
        CommandTrial.of(
            data, trial -> List.of(new CatalogueLoadCommand(DemoBooks.of(trial), trial.notices())));
  }

  @Test
  void forty_kinds_of_bad_rows_give_forty_clear_messages() throws IOException {
    Ended ended = shell.run("catalogue", "load", FOLDER.toString());

    assertThat(ended.exitCode()).isEqualTo(2);
    List<String> messages = ended.err().lines().toList();
    List<CSVRecord> expected = expected();
    assertThat(messages).hasSize(40).hasSameSizeAs(expected);
    for (int i = 0; i < messages.size(); i++) {
      assertThat(messages.get(i)).startsWith(where(expected.get(i)));
      assertThat(messages.get(i)).contains(expected.get(i).get("allowed"));
      String nearest = expected.get(i).get("nearest");
      if (!nearest.isEmpty()) {
        assertThat(messages.get(i)).endsWith("Did you mean '" + nearest + "'?");
      }
    }
  }

  @Test
  void the_same_problems_are_a_script_s_to_read() throws IOException {
    JsonNode problems =
        shell
            .run("catalogue", "load", FOLDER.toString(), "--json")
            .json()
            .get("error")
            .get("problems");

    List<CSVRecord> expected = expected();
    assertThat(problems).hasSize(40);
    for (int i = 0; i < problems.size(); i++) {
      assertThat(problems.get(i).get("value").asString()).isEqualTo(expected.get(i).get("value"));
      assertThat(problems.get(i).get("nearest").asString())
          .isEqualTo(expected.get(i).get("nearest"));
    }
  }

  @Test
  void nothing_of_the_books_changes() {
    Catalogue before = catalogue();

    shell.run("catalogue", "load", FOLDER.toString());

    Catalogue after = catalogue();
    assertThat(after.items()).isNotEmpty().isEqualTo(before.items());
    assertThat(after.items())
        .allSatisfy(
            item ->
                assertThat(after.priceHistory(item.number()))
                    .isEqualTo(before.priceHistory(item.number())));
    try (Books books = DemoBooks.of(shell).get()) {
      assertThat(books.shelf().priceHistory("H175-DJ-50-15NH"))
          .allSatisfy(row -> assertThat(row.broughtBy().number()).isEqualTo(1));
    }
  }

  @Test
  void every_problem_can_be_written_to_a_file_that_a_second_round_replaces() throws IOException {
    Path report = data.resolve("bad-rows.csv");
    for (int round = 1; round <= 2; round++) {
      Ended ended =
          shell.run("catalogue", "load", FOLDER.toString(), "--report", report.toString());

      assertThat(ended.err()).contains("40 problems in all; every one is in");
    }
    assertThat(Files.readAllLines(report))
        .hasSize(41)
        .first()
        .isEqualTo("where,value,allowed,nearest");
    Path other = Files.writeString(data.resolve("prices.csv"), "item,price\n");
    assertThat(
            shell.run("catalogue", "load", FOLDER.toString(), "--report", other.toString()).err())
        .contains("report cannot be");
    assertThat(other).hasContent("item,price\n");
  }

  private Catalogue catalogue() {
    try (Books books = DemoBooks.of(shell).get()) {
      return books.catalogue();
    }
  }

  private static String where(CSVRecord row) {
    String column = row.get("column").isEmpty() ? "" : " column " + row.get("column");
    String value =
        row.get("value").isEmpty() ? " is missing: " : " cannot be '" + row.get("value") + "': ";
    return "items.csv line " + row.get("line") + column + value;
  }

  private static List<CSVRecord> expected() throws IOException {
    try (Reader text = Files.newBufferedReader(FOLDER.resolve("expected.csv"))) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(text)
          .getRecords();
    }
  }
}
