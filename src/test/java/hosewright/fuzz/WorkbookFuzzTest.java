package hosewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.CellRows;
import hosewright.intake.XlsxRows;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.logging.LogManager;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks with something changed in their markup or their bytes, read as a dealer's list. */
final class WorkbookFuzzTest {
  private static final long SEED = 20261125;
  private static final Pattern ATTRIBUTE = Pattern.compile("=\"([^\"]*)\"");
  private static final Pattern CONTENT = Pattern.compile(">([^<]+)<");
  private static final Pattern ELEMENT = Pattern.compile("<(row|c|v|f|is|si|t|xf|sheet)\\b[^>]*>");
  private static final List<String> AWKWARD_VALUES =
      List.of(
          "-1",
          "1e999999999",
          "1E-999999999",
          "99999999999999999999",
          "2147483648",
          "XFE1",
          "ZZZZZZZZ1",
          "A0",
          "A",
          "NaN",
          "",
          "rId999",
          "../../../../etc/passwd",
          "http://example.invalid/x",
          "&lt;!--",
          "&#x10FFFF;",
          "&#0;",
          "&b;");

  @TempDir Path folder;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final Mutation mutation = new Mutation(random);

  @Test
  void three_hundred_changed_workbooks_give_rows_or_a_refusal() throws Exception {
    Watchdog.watch(dog -> fuzz(300, dog));
  }

  @Test
  @Tag("long")
  void thirty_thousand_changed_workbooks() throws Exception {
    Watchdog.watch(dog -> fuzz(30_000, dog));
  }

  private void fuzz(int count, Watchdog dog) throws IOException {
    // As the program does: the library logs every damaged part.
    LogManager.getLogManager().reset();
    Map<String, byte[]> parts = parts(priceList());
    Path file = folder.resolve("list.xlsx");
    int read = 0;
    for (int i = 0; i < count; i++) {
      Files.write(file, changed(parts));
      try {
        new XlsxRows(file, Optional.empty()).each(new EveryRow());
        read++;
      } catch (BadInputException refused) {
        assertThat(refused.problems()).isNotEmpty();
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + SEED + ", workbook " + i, e);
      }
      dog.feed();
    }
    // Were every one refused, or none, the changes would try nothing.
    assertThat(read).isBetween(count / 20, count * 19 / 20);
  }

  private static final class EveryRow implements CellRows.Taker {
    @Override
    public boolean take(CellRows.Row row) {
      return true;
    }

    @Override
    public void refuse(Problem problem) {
      assertThat(problem.allowed()).isNotEmpty();
    }
  }

  private byte[] changed(Map<String, byte[]> sound) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>(sound);
    List<String> names = List.copyOf(parts.keySet());
    for (int changes = random.nextInt(3); changes >= 0; changes--) {
      String name = names.get(random.nextInt(names.size()));
      String text = new String(parts.get(name), StandardCharsets.UTF_8);
      parts.put(name, changed(text).getBytes(StandardCharsets.UTF_8));
    }
    byte[] bytes = zipped(parts);
    return switch (random.nextInt(12)) {
      case 0 -> Arrays.copyOf(bytes, random.nextInt(bytes.length));
      case 1 -> {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        yield bytes;
      }
      default -> bytes;
    };
  }

  private String changed(String text) {
    return switch (random.nextInt(8)) {
      case 0 -> mutation.of(text, List.of(text));
      case 1 -> "";
      case 2 ->
          "<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>"
              + text.replaceFirst("<\\?xml[^>]*\\?>", "");
      case 3 -> withOne(ELEMENT, text, found -> found.repeat(1 + random.nextInt(2_000)));
      case 4 -> withOne(CONTENT, text, found -> ">" + "9".repeat(random.nextInt(100_000)) + "<");
      case 5, 6 -> withOne(ATTRIBUTE, text, found -> "=\"" + awkward() + "\"");
      default -> withOne(CONTENT, text, found -> ">" + awkward() + "<");
    };
  }

  private String awkward() {
    return AWKWARD_VALUES.get(random.nextInt(AWKWARD_VALUES.size()));
  }

  private interface Change {
    String of(String found);
  }

  private String withOne(Pattern pattern, String text, Change change) {
    List<MatchResult> found = pattern.matcher(text).results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult one = found.get(random.nextInt(found.size()));
    return text.substring(0, one.start()) + change.of(one.group()) + text.substring(one.end());
  }

  private static byte[] priceList() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      CellStyle day = workbook.createCellStyle();
      day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
      Sheet sheet = workbook.createSheet("prices");
      for (int i = 0; i < 6; i++) {
        Row row = sheet.createRow(i);
        row.createCell(0).setCellValue("H" + i);
        row.createCell(1).setCellValue(12.25 + i);
        row.createCell(2).setCellValue(LocalDate.of(2026, 1, 1 + i));
        row.getCell(2).setCellStyle(day);
        row.createCell(3).setCellFormula("B" + (i + 1) + "*2");
        row.createCell(4).setCellValue(i % 2 == 0);
      }
      workbook.createSheet("notes").createRow(0).createCell(0).setCellValue("by the foot");
      workbook.write(out);
      return out.toByteArray();
    }
  }

  private static Map<String, byte[]> parts(byte[] workbook) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.put(entry.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  private static byte[] zipped(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}
