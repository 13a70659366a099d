package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The page of published examples against the file the examples are tested from. */
final class PublishedExamplesDocumentTest {
  private static final Path FOLDER = Path.of("src/test/resources/hosewright/hydraulics");
  private static final Path PAGE = Path.of("src/docs/published-examples.md");

  private static List<CSVRecord> rows(String file) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(FOLDER.resolve(file), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  private static String asShown(CSVRecord row) {
    return String.format(
        "| %s | %s | %s | %s %s | %s | %s |",
        row.get("id"),
        row.get("quantity"),
        row.get("inputs"),
        row.get("published"),
        row.get("unit"),
        row.get("tolerance"),
        row.get("citation"));
  }

  @Test
  void the_page_lists_every_published_example_and_no_other() throws IOException {
    List<String> wanted =
        rows("published-examples.csv").stream()
            .map(PublishedExamplesDocumentTest::asShown)
            .toList();

    assertThat(Files.readAllLines(PAGE))
        .filteredOn(line -> line.startsWith("| P"))
        .containsExactlyElementsOf(wanted);
  }

  @Test
  void comparisons_with_a_library_and_common_practice_stand_apart() throws IOException {
    List<String> libraries =
        rows("library-comparisons.csv").stream()
            .map(PublishedExamplesDocumentTest::asShown)
            .toList();
    List<String> practice =
        rows("common-practice-examples.csv").stream()
            .map(PublishedExamplesDocumentTest::asShown)
            .toList();

    List<String> lines = Files.readAllLines(PAGE);
    assertThat(lines).containsSubsequence(libraries).containsSubsequence(practice);
    int published = lines.lastIndexOf(asShown(rows("published-examples.csv").get(0)));
    assertThat(lines.indexOf(libraries.get(0))).isGreaterThan(published);
    assertThat(lines.indexOf(practice.get(0))).isGreaterThan(published);
  }

  @Test
  void at_least_thirty_are_published_and_none_is_weak() throws IOException {
    assertThat(rows("published-examples.csv"))
        .hasSizeGreaterThanOrEqualTo(30)
        .allSatisfy(
            row ->
                assertThat(row.get("citation"))
                    .isNotBlank()
                    .doesNotContainIgnoringCase("weak")
                    .doesNotContainIgnoringCase("no source")
                    .doesNotContainIgnoringCase("from memory")
                    .doesNotContainIgnoringCase("docstring")
                    .doesNotContainIgnoringCase("study cards")
                    .doesNotContainIgnoringCase("exam item"));
  }
}
