package hosewright.paper.sheet;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads back a sheet somebody filled in, whether it came as a workbook or as CSV. */
public final class FilledSheet {
  private static final int MOST_ROWS = 10_000;

  private FilledSheet() {}

  /**
   * A row under the heading row.
   *
   * @param place file and row as a person finds it
   * @param cells text by column; every column asked for is there
   */
  public record Filled(String place, Map<String, String> cells) {}

  /**
   * The rows below the first row that names all columns; other columns are passed over.
   *
   * @throws BadInputException when the file cannot be read or has no such row
   */
  public static List<Filled> read(Path file, List<String> columns) {
    String name = file.getFileName().toString();
    List<List<String>> rows;
    try {
      rows = name.toLowerCase(Locale.ROOT).endsWith(".xlsx") ? workbook(file) : csv(file);
    } catch (IOException | RuntimeException e) {
      throw new BadInputException("file", file.toString(), "a filled-in sheet, .xlsx or .csv");
    }
    for (int i = 0; i < rows.size(); i++) {
      List<String> heading = rows.get(i);
      if (heading.containsAll(columns)) {
        return below(name, rows, i, heading, columns);
      }
    }
    throw new BadInputException(
        "file", file.toString(), "a sheet with the columns " + String.join(", ", columns));
  }

  private static List<Filled> below(
      String name,
      List<List<String>> rows,
      int headingRow,
      List<String> heading,
      List<String> columns) {
    List<Filled> filled = new ArrayList<>();
    for (int i = headingRow + 1; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      Map<String, String> cells = new LinkedHashMap<>();
      for (String column : columns) {
        int at = heading.indexOf(column);
        cells.put(column, at < row.size() ? row.get(at) : "");
      }
      if (cells.values().stream().anyMatch(text -> !text.isEmpty())) {
        filled.add(new Filled(name + " row " + (i + 1), cells));
      }
    }
    return filled;
  }

  private static List<List<String>> csv(Path file) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.builder().setReader(text).setFormat(format).get()) {
      for (var record : parser) {
        rows.add(record.stream().map(cell -> cell.replace("\uFEFF", "").strip()).toList());
        tooMany(rows);
      }
    }
    return rows;
  }

  private static List<List<String>> workbook(Path file) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    DataFormatter shown = new DataFormatter(Locale.ROOT);
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      var sheet = workbook.getSheetAt(0);
      for (int i = 0; i <= sheet.getLastRowNum(); i++) {
        List<String> cells = new ArrayList<>();
        Row row = sheet.getRow(i);
        for (int column = 0; row != null && column < row.getLastCellNum(); column++) {
          Cell cell = row.getCell(column);
          cells.add(cell == null ? "" : text(cell, shown));
        }
        rows.add(cells);
        tooMany(rows);
      }
    }
    return rows;
  }

  /** A number as it is kept, not as its format rounds it. */
  private static String text(Cell cell, DataFormatter shown) {
    return cell.getCellType() == CellType.NUMERIC
        ? BigDecimal.valueOf(cell.getNumericCellValue()).stripTrailingZeros().toPlainString()
        : shown.formatCellValue(cell).strip();
  }

  private static void tooMany(List<List<String>> rows) {
    if (rows.size() > MOST_ROWS) {
      throw new IllegalArgumentException("more than " + MOST_ROWS + " rows");
    }
  }
}
