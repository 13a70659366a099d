package hosewright.paper.order;

import hosewright.paper.order.Slip.Part;
import hosewright.paper.page.Lettering;
import hosewright.paper.page.Paper;
import hosewright.paper.page.PdfSheet;
import hosewright.problem.PlainText;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** A slip on PDF pages. The same slip always gives the same bytes. */
public final class SlipPdf {
  private static final double SIZE = 8.5;
  private static final double LINE = SIZE * 1.25;
  private static final double GAP = 6;

  private final PdfSheet sheet;

  private SlipPdf(PdfSheet sheet) {
    this.sheet = sheet;
  }

  /** Writes the pages. The stream stays open. */
  public static void write(Slip slip, Paper paper, OutputStream out) throws IOException {
    try (PDDocument document = new PDDocument();
        PdfSheet sheet = new PdfSheet(document, paper)) {
      document.setDocumentId((long) slip.title().hashCode());
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(PlainText.spelt(slip.title()));
      document.setDocumentInformation(information);
      new SlipPdf(sheet).fill(slip);
      sheet.finish(slip.title());
      document.save(out);
    }
  }

  private void fill(Slip slip) throws IOException {
    sheet.text(slip.title(), 0, 14, true);
    sheet.down(20);
    for (String fact : slip.facts()) {
      paragraph(fact);
    }
    for (Part part : slip.parts()) {
      part(part);
    }
  }

  private void part(Part part) throws IOException {
    keepTogether(5 * LINE);
    sheet.down(10);
    sheet.text(part.heading(), 0, 10.5, true);
    sheet.down(14);
    if (!part.columns().isEmpty()) {
      heading(part);
      for (List<String> row : part.rows()) {
        row(part, row);
      }
      sheet.down(4);
    }
    for (String remark : part.remarks()) {
      paragraph(remark);
    }
  }

  private void heading(Part part) throws IOException {
    sheet.rule(0, sheet.width());
    sheet.down(2);
    cells(part, part.columns(), true);
    sheet.down(2);
    sheet.rule(0, sheet.width());
    sheet.down(2);
  }

  private void row(Part part, List<String> row) throws IOException {
    if (!sheet.hasRoom(height(part, row) * LINE + 6)) {
      sheet.newPage();
      heading(part);
    }
    cells(part, row, false);
    sheet.down(2);
    sheet.rule(0, sheet.width());
    sheet.down(2);
  }

  private void cells(Part part, List<String> row, boolean bold) throws IOException {
    int height = height(part, row);
    List<List<String>> wrapped = wrapped(part, row);
    for (int line = 0; line < height; line++) {
      double left = 0;
      for (int column = 0; column < row.size(); column++) {
        double width = width(part, column);
        List<String> cell = wrapped.get(column);
        if (line < cell.size()) {
          if (part.figures().contains(column)) {
            sheet.textEndingAt(cell.get(line), left + width - GAP, SIZE, bold);
          } else {
            sheet.text(cell.get(line), left, SIZE, bold);
          }
        }
        left += width;
      }
      sheet.down(LINE);
    }
  }

  private int height(Part part, List<String> row) {
    return Math.max(1, wrapped(part, row).stream().mapToInt(List::size).max().orElse(1));
  }

  private List<List<String>> wrapped(Part part, List<String> row) {
    List<List<String>> cells = new ArrayList<>();
    for (int column = 0; column < row.size(); column++) {
      cells.add(
          Lettering.sans().wrap(PdfSheet.shown(row.get(column)), SIZE, width(part, column) - GAP));
    }
    return cells;
  }

  private double width(Part part, int column) {
    double all = part.widths().stream().mapToInt(Integer::intValue).sum();
    return sheet.width() * part.widths().get(column) / all;
  }

  private void paragraph(String text) throws IOException {
    for (String line : Lettering.sans().wrap(PdfSheet.shown(text), 9, sheet.width())) {
      keepTogether(LINE);
      sheet.text(line, 0, 9, false);
      sheet.down(9 * 1.3);
    }
  }

  private void keepTogether(double points) throws IOException {
    if (!sheet.hasRoom(points)) {
      sheet.newPage();
    }
  }
}
