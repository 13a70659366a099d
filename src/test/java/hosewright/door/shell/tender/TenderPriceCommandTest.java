package hosewright.door.shell.tender;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.quote.QuoteListCommand;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

final class TenderPriceCommandTest {
  private static final String HEADER =
      "id,title,from,to,length (ft),flow,need (psi),source-pressure,size,use\n";
  private static final String LINE = ",2.5 NH male hydrant,1.5 NH female nozzle,400,";

  /** Two jobs that can be laid and are alike, one too weak, one that cannot be read. */
  private static final String JOBS =
      HEADER
          + ("=1+1,@first" + LINE + "95 gpm,75,150 psi,1.75 in,fire\n")
          + ("2,weak" + LINE + "150 gpm,75,150 psi,1.75 in,fire\n")
          + ("3,unreadable" + LINE + "95,75,150 psi,1.75 in,fyre\n")
          + ("4,last" + LINE + "95 gpm,75,150 psi,1.75 in,fire\n");

  /** One set of books for all: loading the catalogue takes longer than the tests. */
  @TempDir private static Path data;

  @TempDir private Path folder;
  private Path file;
  private CommandTrial trial;

  @BeforeEach
  void set_up() throws IOException {
    file = Files.writeString(folder.resolve("jobs.csv"), JOBS);
    trial =
        CommandTrial.of(
            data,
            self ->
                List.of(
                    new TenderPriceCommand(DemoBooks.of(self), self.notices()),
                    new QuoteListCommand(DemoBooks.of(self))));
  }

  private Ended price(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of("tender", "price", file.toString(), "--out", folder.toString(), "--json"));
    words.addAll(List.of(more));
    return trial.run(words.toArray(String[]::new));
  }

  private XSSFWorkbook workbook() throws IOException {
    try (InputStream in = Files.newInputStream(folder.resolve("jobs-priced.xlsx"))) {
      return new XSSFWorkbook(in);
    }
  }

  private static double figure(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    Cell cell = workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    assertThat(cell.getCellType()).as(name).isEqualTo(CellType.FORMULA);
    double kept = cell.getNumericCellValue();
    workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
    assertThat(cell.getNumericCellValue()).as(name).isEqualTo(kept);
    return kept;
  }

  private static List<Row> rows(XSSFSheet sheet) {
    List<Row> rows = new ArrayList<>();
    boolean below = false;
    for (Row row : sheet) {
      if (below) {
        rows.add(row);
      }
      below |= row.getCell(0) != null && row.getCell(0).toString().equals("Line");
    }
    return rows;
  }

  @Test
  void each_row_is_answered_in_its_place_and_none_stops_the_rest() throws IOException {
    Ended ended = price("--threads", "2");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    JsonNode answer = ended.json();
    assertThat(answer.path("feasible").asInt()).isEqualTo(2);
    assertThat(answer.path("noSafePlan").asInt()).isEqualTo(1);
    assertThat(answer.path("notRead").asInt()).isEqualTo(1);
    try (XSSFWorkbook workbook = workbook()) {
      List<Row> jobs = rows(workbook.getSheet("Tender"));
      assertThat(jobs)
          .extracting(row -> row.getCell(3).getStringCellValue())
          .containsExactly("yes", "no", "not read", "yes");
      double goods = jobs.get(0).getCell(14).getNumericCellValue();
      assertThat(jobs.get(3).getCell(14).getNumericCellValue()).isEqualTo(goods).isPositive();
      assertThat(jobs.get(1).getCell(4).getStringCellValue()).contains("psi at the source");
      assertThat(figure(workbook, "tender_jobs")).isEqualTo(4);
      assertThat(figure(workbook, "tender_laid")).isEqualTo(2);
      assertThat(figure(workbook, "tender_no_safe_plan")).isEqualTo(1);
      assertThat(figure(workbook, "tender_not_read")).isEqualTo(1);
      assertThat(figure(workbook, "tender_goods")).isEqualTo(goods * 2);
      List<Row> errors = rows(workbook.getSheet("Errors"));
      assertThat(errors)
          .extracting(row -> row.getCell(3) + "|" + row.getCell(4) + "|" + row.getCell(6))
          .hasSize(3)
          .contains("flow|95|95 gpm", "use|fyre|fire");
    }
  }

  @Test
  void text_that_looks_like_a_formula_stays_text() throws IOException {
    price();
    try (XSSFWorkbook workbook = workbook()) {
      Row first = rows(workbook.getSheet("Tender")).get(0);
      for (int column : new int[] {1, 2}) {
        Cell cell = first.getCell(column);
        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
      }
      assertThat(first.getCell(1).getStringCellValue()).isEqualTo("=1+1");
    }
  }

  @Test
  void the_same_file_gives_the_same_bytes_and_an_output_is_not_replaced_unasked()
      throws IOException {
    price("--threads", "1");
    Path output = folder.resolve("jobs-priced.xlsx");
    byte[] first = Files.readAllBytes(output);
    Ended again = price();
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("the file exists");
    assertThat(price("--threads", "4", "--overwrite").exitCode()).isZero();
    assertThat(output).hasBinaryContent(first);
  }

  @Test
  void quotes_are_kept_for_the_jobs_that_can_be_laid_and_no_other() throws IOException {
    Ended nobody = price("--quotes", "--overwrite");
    assertThat(nobody.json().path("notRead").asInt()).isEqualTo(4);
    assertThat(price("--quotes", "--overwrite", "--customer", "COUNTER").exitCode()).isZero();
    JsonNode quotes = trial.run("quote", "list", "--json").json().path("quotes");
    assertThat(quotes.size()).isEqualTo(2);
    try (XSSFWorkbook workbook = workbook()) {
      assertThat(rows(workbook.getSheet("Tender")))
          .extracting(row -> row.getCell(16).getStringCellValue())
          .containsExactly("Q-000001", "", "", "Q-000002");
    }
  }

  @Test
  void a_file_priced_again_has_the_quotes_it_has_and_no_second_set() {
    price("--quotes", "--overwrite", "--customer", "COUNTER");

    Ended again = price("--quotes", "--overwrite", "--customer", "COUNTER");

    assertThat(again.exitCode()).isZero();
    assertThat(again.err().replaceAll("\\s+", " ")).contains("its 2 quotes stand");
    assertThat(trial.run("quote", "list", "--json").json().path("quotes").size()).isEqualTo(2);
  }

  @Test
  void a_wrong_header_date_customer_or_thread_count_is_refused_and_nothing_is_written()
      throws IOException {
    Ended options = price("--threads", "0", "--date", "yesterday");
    assertThat(options.exitCode()).isEqualTo(2);
    assertThat(options.json().path("error").path("problems").size()).isEqualTo(2);
    assertThat(price("--customer", "COUNTR").err()).contains("Did you mean 'COUNTER'?");
    Files.writeString(file, JOBS.replaceFirst("need", "nead"));
    assertThat(price().err()).contains("'nead (psi)'").contains("Did you mean 'need'?");
    assertThat(folder.resolve("jobs-priced.xlsx")).doesNotExist();
    assertThat(folder.resolve("jobs-priced.journal")).doesNotExist();
  }
}
