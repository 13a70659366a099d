package hosewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import hosewright.csv.CsvFile;
import hosewright.csv.CsvRow;
import hosewright.csv.Limits;
import hosewright.csv.TableForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DealerFilesTest {
  private static final TableForm GOODS =
      new TableForm(
          "goods.csv",
          List.of("number", "kind", "ends", "weight_lb", "hose_size_in", "from", "marked"),
          List.of("number", "kind"));

  @TempDir private Path folder;
  private final List<Problem> problems = new ArrayList<>();

  @Test
  void cells_of_a_workbook_are_read_as_they_were_typed() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("goods");
      row(sheet, 0, GOODS.columns().toArray());
      Row row = row(sheet, 2, 10045, "adapter", "2.5 NH male", 0.1 + 0.2, 1.75);
      CellStyle day = workbook.createCellStyle();
      day.setDataFormat(workbook.createDataFormat().getFormat("dd/mm/yyyy"));
      Cell from = row.createCell(5);
      from.setCellValue(LocalDate.of(2026, 1, 31));
      from.setCellStyle(day);
      row.createCell(6).setCellValue(true);
      write(workbook, "goods.xlsx");
    }

    assertThat(read(Optional.empty()))
        .containsExactly(
            List.of("10045", "adapter", "2.5 NH male", "0.3", "1.75", "2026-01-31", "yes"));
    assertThat(problems).isEmpty();
  }

  @Test
  void of_a_formula_the_value_last_calculated_is_taken_and_one_without_is_shown_as_it_is()
      throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("goods");
      row(sheet, 0, GOODS.columns().toArray());
      Row row = row(sheet, 1, "A", "cap", "", "", 2.5);
      row.getCell(2).setCellFormula("IF(E2>9,\"1.5 NH male\",\"\")");
      row.getCell(3).setCellFormula("E2*2");
      row.createCell(5).setCellFormula("E2*3");
      for (int calculated : new int[] {2, 3}) {
        workbook
            .getCreationHelper()
            .createFormulaEvaluator()
            .evaluateFormulaCell(row.getCell(calculated));
      }
      write(workbook, "goods.xlsx");
    }

    assertThat(read(Optional.empty()).get(0).subList(2, 6))
        .containsExactly("", "5", "2.5", "=E2*3");
  }

  @Test
  void a_dealer_s_own_columns_become_ours_by_a_mapping() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("Cover");
      Sheet sheet = workbook.createSheet("Articles");
      row(sheet, 0, "Price list of the invented Quillback dealer");
      row(sheet, 2, "Part No.", "Group", "In", "Out", "Mass", "Bore", "Valid");
      row(sheet, 3, "P-1", "ADPT", "2.5 NST F", "1.5 NST M", 2, 64, "31.1.2026");
      row(sheet, 4, "P-2", "Cap", "2.5 NST F");
      write(workbook, "list.xlsx");
    }
    Path mapping =
        Files.writeString(
            folder.resolve("map.yaml"),
            """
            goods:
              file: list.xlsx
              sheet: articles
              header-line: 3
              columns:
                number: Part No.
                kind: {column: Group, words: {ADPT: adapter, Cap: cap}}
                ends: {columns: [In, Out]}
                weight_lb: {column: Mass, unit: kg}
                hose_size_in: {column: Bore, unit: mm}
                from: {column: Valid, dates: day month year}
                marked: {always: no}
            """);

    // A pound is 0.45359237 kg (NIST SP 811), so 2 kg are 4.409245 lb; 64 mm is a 2.5 in hose.
    assertThat(read(Optional.of(mapping)))
        .containsExactly(
            List.of(
                "P-1", "adapter", "2.5 NST F x 1.5 NST M", "4.409245", "2.5", "2026-01-31", "no"),
            List.of("P-2", "cap", "2.5 NST F", "", "", "", "no"));
    assertThat(problems).isEmpty();
  }

  @Test
  void a_mapped_cell_that_cannot_be_used_is_shown_as_the_dealer_knows_it() throws IOException {
    Files.write(
        folder.resolve("liste.csv"),
        "Teil;Art;Gewicht\nÄ-1;cap;1.234,50\nÄ-2;cap;schwer\n"
            .getBytes(Charset.forName("windows-1252")));
    Path mapping =
        Files.writeString(
            folder.resolve("map.yaml"),
            """
            goods:
              file: liste.csv
              separator: semicolon
              encoding: windows-1252
              decimal-comma: yes
              columns:
                number: Teil
                kind: Art
                weight_lb: {column: Gewicht, unit: kg}
            """);

    List<CsvRow> rows = rows(Optional.of(mapping));
    assertThat(rows.get(0).cell("number")).isEqualTo("Ä-1");
    assertThat(Double.parseDouble(rows.get(0).cell("weight_lb")))
        .isCloseTo(1234.5 / 0.45359237, within(1e-6));
    rows.get(1).number("weight_lb", Limits.between(0, 9, "lb"));

    assertThat(problems)
        .extracting(Problem::sentence)
        .containsExactly(
            "liste.csv line 3 column Gewicht (weight_lb, in kg) cannot be 'schwer':"
                + " a number from 0 to 9 lb.");
  }

  @Test
  void every_mistake_in_a_mapping_is_told_with_its_line_and_what_was_meant() throws IOException {
    Path mapping =
        Files.writeString(
            folder.resolve("map.yaml"),
            """
            goods:
              file: list.csv
              seperator: semicolon
              columns:
                numbr: Part No.
                kind: {column: Group, always: cap}
                weight_lb: {column: Mass, unit: psi}
            goodies: none
            """);

    assertThatThrownBy(() -> read(Optional.of(mapping)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("map.yaml line 3 cannot be 'seperator'")
        .hasMessageContaining("Did you mean 'separator'?")
        .hasMessageContaining("map.yaml line 5 cannot be 'numbr'")
        .hasMessageContaining("it must say where number comes from")
        .hasMessageContaining("map.yaml line 6")
        .hasMessageContaining("map.yaml line 7 cannot be 'psi'")
        .hasMessageContaining("map.yaml line 8 cannot be 'goodies'");
  }

  @Test
  void a_column_the_mapping_names_in_vain_is_told_with_the_nearest() throws IOException {
    Files.writeString(folder.resolve("list.csv"), "Part No.,Group\nP-1,cap\n");
    Path mapping =
        Files.writeString(
            folder.resolve("map.yaml"),
            "goods:\n  file: list.csv\n  columns:\n    number: Part Nr.\n    kind: Group\n");

    read(Optional.of(mapping));

    assertThat(problems)
        .extracting(Problem::value, Problem::nearest)
        .containsExactly(tuple("Part Nr.", "Part No."));
  }

  @Test
  void a_table_there_twice_is_refused_and_a_missing_sheet_named() throws IOException {
    Files.writeString(folder.resolve("goods.csv"), "number\n");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("gods");
      write(workbook, "goods.xlsx");
    }

    assertThatThrownBy(() -> read(Optional.empty())).hasMessageContaining("only one of goods.csv");
    assertThatThrownBy(
            () ->
                DealerFiles.open(
                    folder.resolve("goods.xlsx"), Optional.empty(), List.of(GOODS), List.of()))
        .hasMessageContaining("a workbook that has a sheet goods");
  }

  @Test
  void a_workbook_that_declares_entities_is_refused() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      row(workbook.createSheet("goods"), 0, "number");
      write(workbook, "plain.xlsx");
    }
    String bomb =
        "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]>"
            + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
            + "<sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&b;</t></is></c></row>"
            + "</sheetData></worksheet>";
    withSheet(bomb.getBytes(StandardCharsets.UTF_8));

    read(Optional.empty());

    assertThat(problems).extracting(Problem::field).containsExactly("file");
  }

  @Test
  void a_workbook_that_unfolds_to_far_more_than_it_is_gets_refused() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      row(workbook.createSheet("goods"), 0, "number");
      write(workbook, "plain.xlsx");
    }
    withSheet(
        ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                + " ".repeat(20_000_000)
                + "</worksheet>")
            .getBytes(StandardCharsets.UTF_8));

    read(Optional.empty());

    assertThat(problems).singleElement().extracting(Problem::allowed).asString().contains("unfold");
  }

  @Test
  void a_tag_without_end_is_given_up_before_it_fills_memory() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      row(workbook.createSheet("goods"), 0, "number");
      write(workbook, "plain.xlsx");
    }
    // Too well mixed to be folded small, so that the guard of the zip sees nothing in it.
    StringBuilder long_ = new StringBuilder();
    SplittableRandom random = new SplittableRandom(20261130);
    while (long_.length() < 6_000_000) {
      long_.append(Long.toString(random.nextLong(), 36));
    }
    withSheet(
        ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" x=\""
                + long_
                + "\"></worksheet>")
            .getBytes(StandardCharsets.UTF_8));

    read(Optional.empty());

    assertThat(problems).singleElement().extracting(Problem::allowed).asString().contains("unfold");
  }

  @Test
  void a_folder_in_the_place_of_a_table_is_refused_even_where_the_table_may_be_missing()
      throws IOException {
    Files.createDirectory(folder.resolve("goods.csv"));

    for (boolean required : List.of(true, false)) {
      List<TableForm> forms = List.of(GOODS);
      assertThatThrownBy(
              () ->
                  DealerFiles.open(
                      folder,
                      Optional.empty(),
                      required ? forms : List.of(),
                      required ? List.of() : forms))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining(folder.resolve("goods.csv").toString())
          .hasMessageContaining("no folder, pipe or device");
    }
  }

  @Test
  void hidden_marks_are_refused_in_workbooks_and_in_what_a_mapping_adds() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("goods");
      row(sheet, 0, GOODS.columns().toArray());
      row(sheet, 1, "H-1", "ho\u200Bse", "", "", "", "", "");
      write(workbook, "goods.xlsx");
    }
    Path mapping =
        Files.writeString(
            folder.resolve("map.yaml"), "goods:\n  file: goods.xlsx\n  sheet: \"\\u202e\"\n");

    read(Optional.empty());

    assertThat(problems)
        .extracting(Problem::field, Problem::nearest)
        .containsExactly(tuple("goods.xlsx line 2 column kind", "hose"));
    assertThatThrownBy(() -> read(Optional.of(mapping))).hasMessageContaining("map.yaml line 3");
  }

  @Test
  void what_is_no_workbook_is_refused() throws IOException {
    Files.writeString(folder.resolve("goods.xlsx"), "number,kind\n");

    read(Optional.empty());

    assertThat(problems)
        .singleElement()
        .extracting(Problem::allowed)
        .asString()
        .contains("saved as .xlsx");
  }

  private void withSheet(byte[] sheet) throws IOException {
    try (ZipInputStream in =
            new ZipInputStream(Files.newInputStream(folder.resolve("plain.xlsx")));
        ZipOutputStream out =
            new ZipOutputStream(Files.newOutputStream(folder.resolve("goods.xlsx")))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(entry.getName().equals("xl/worksheets/sheet1.xml") ? sheet : in.readAllBytes());
      }
    }
  }

  private List<List<String>> read(Optional<Path> mapping) {
    return rows(mapping).stream()
        .map(row -> GOODS.columns().stream().map(row::cell).toList())
        .toList();
  }

  private List<CsvRow> rows(Optional<Path> mapping) {
    return CsvFile.of(DealerFiles.open(folder, mapping, List.of(GOODS), List.of()), GOODS, problems)
        .rows();
  }

  private static Row row(Sheet sheet, int at, Object... values) {
    Row row = sheet.createRow(at);
    for (int i = 0; i < values.length; i++) {
      Cell cell = row.createCell(i);
      if (values[i] instanceof Number number) {
        cell.setCellValue(number.doubleValue());
      } else {
        cell.setCellValue(values[i].toString());
      }
    }
    return row;
  }

  private void write(XSSFWorkbook workbook, String name) throws IOException {
    try (OutputStream out = Files.newOutputStream(folder.resolve(name))) {
      workbook.write(out);
    }
  }
}
