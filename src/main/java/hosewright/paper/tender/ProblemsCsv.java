package hosewright.paper.tender;

import hosewright.paper.sheet.Cells;
import hosewright.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What is wrong with a file, as a table to mend it by (RFC 4180, UTF-8). */
public final class ProblemsCsv {
  /** The heading row, by which a file can be known as such a table. */
  public static final String HEADING = "where,value,allowed,nearest";

  private ProblemsCsv() {}

  /** Writes a heading row and a row for each problem. The stream stays open. */
  public static void write(List<Problem> problems, OutputStream out) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader(HEADING.split(",")).get();
    CSVPrinter printer =
        new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), format);
    for (Problem problem : problems) {
      printer.printRecord(
          Cells.inCsv(problem.field()),
          Cells.inCsv(problem.value()),
          Cells.inCsv(problem.allowed()),
          Cells.inCsv(problem.nearest()));
    }
    printer.flush();
  }
}
