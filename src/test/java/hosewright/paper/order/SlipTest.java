package hosewright.paper.order;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.intake.FilledSheet;
import hosewright.paper.page.Paper;
import hosewright.paper.quote.AskSheet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Working papers, and the sheets that go out to suppliers and come back. */
final class SlipTest {
  private static final Slip SLIP =
      new Slip(
          "To pick for O-000001",
          List.of("=1+1"),
          List.of(
              new Slip.Part(
                  "To pick",
                  List.of("Item", "Description", "Quantity"),
                  Set.of(2),
                  List.of(12, 40, 8),
                  List.of(List.of("@SUM(A1)", "-2+3 hose", "12")),
                  List.of("+ a remark")),
              Slip.Part.of("Labels", List.of("O-000001 | section 1 of 9"))));

  @TempDir Path folder;

  @Test
  void a_workbook_of_a_slip_holds_numbers_as_numbers_and_runs_no_text() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SlipWorkbook.write(SLIP, "Quillback & Co", Paper.A4, bytes);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
      XSSFCell item = workbook.getSheet("To pick").getRow(4).getCell(0);
      XSSFCell quantity = workbook.getSheet("To pick").getRow(4).getCell(2);

      assertThat(item.getStringCellValue()).isEqualTo("@SUM(A1)");
      assertThat(item.getCellStyle().getQuotePrefixed()).isTrue();
      assertThat(quantity.getCellType()).isEqualTo(CellType.NUMERIC);
      assertThat(quantity.getNumericCellValue()).isEqualTo(12);
      assertThat(workbook.getNumberOfSheets()).isEqualTo(2);
    }
  }

  @Test
  void a_sheet_is_named_whatever_the_dealer_is_called() throws IOException {
    List<String> names =
        List.of(
            "Signed for Quay/Mole [Hose]: ours?",
            "Signed for \u001B[2JHose",
            "Signed for a hose dealer with a very long name");
    Slip slip =
        new Slip(
            "Purchase order P-000001",
            List.of(),
            names.stream().map(name -> Slip.Part.of(name, List.of("Name"))).toList());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    SlipWorkbook.write(slip, "Quillback & Co", Paper.A4, bytes);

    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(workbook.sheetIterator()).toIterable().hasSize(3);
      assertThat(workbook.getSheetAt(0).getSheetName()).startsWith("Signed for Quay Mole");
      assertThat(workbook.getSheetAt(1).getSheetName()).startsWith("Signed for {U+001B}");
    }
  }

  @Test
  void a_pdf_of_a_slip_says_every_cell_and_the_same_slip_gives_the_same_bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SlipPdf.write(SLIP, Paper.LETTER, bytes);
    ByteArrayOutputStream again = new ByteArrayOutputStream();
    SlipPdf.write(SLIP, Paper.LETTER, again);
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("To pick for O-000001", "@SUM(A1)", "-2+3 hose", "12", "section 1 of 9");
    }
    assertThat(again.toByteArray()).isEqualTo(bytes.toByteArray());
  }

  @Test
  void a_sheet_that_asks_for_prices_comes_back_as_it_went_out_from_either_form()
      throws IOException {
    AskSheet sheet =
        new AskSheet(
            "Q-000001",
            "COUPL",
            "Ketterlode Coupling Foundry",
            "Quillback",
            List.of(new AskSheet.Row(1, "=adapter, 2.5 NH x \"6 Storz\"", 3)));
    Path csv = folder.resolve("a.csv");
    Path xlsx = folder.resolve("a.xlsx");
    try (var out = Files.newOutputStream(csv)) {
      sheet.writeCsv(out);
    }
    try (var out = Files.newOutputStream(xlsx)) {
      sheet.writeWorkbook(Paper.LETTER, out);
    }

    assertThat(Files.readString(csv, StandardCharsets.UTF_8)).contains("\"'=adapter");
    for (Path file : List.of(csv, xlsx)) {
      List<FilledSheet.Filled> rows = FilledSheet.read(file, AskSheet.COLUMNS);
      assertThat(rows).hasSize(1);
      assertThat(rows.get(0).cells())
          .containsEntry("quote", "Q-000001")
          .containsEntry("line", "1")
          .containsEntry("quantity", "3")
          .containsEntry("supplier", "COUPL")
          .containsEntry("unit_price", "");
      assertThat(rows.get(0).cells().get("wanted")).endsWith("=adapter, 2.5 NH x \"6 Storz\"");
    }
  }
}
