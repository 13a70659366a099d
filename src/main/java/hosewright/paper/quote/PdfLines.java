package hosewright.paper.quote;

import hosewright.paper.page.Lettering;
import hosewright.paper.page.PdfSheet;
import hosewright.paper.page.PrintedMoney;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The itemised table of a quote on PDF pages, its heading repeated on each. */
final class PdfLines {
  static final double TAXED_WIDTH = 26;

  private static final double SIZE = 8.5;
  private static final double LINE = SIZE * 1.25;
  private static final double ITEM = 26;
  private static final double DESCRIPTION = 138;

  private final PdfSheet sheet;
  private final Quote quote;
  private final double extendedEnd;
  private final double unitPriceEnd;
  private final double unit;
  private final double quantityEnd;

  PdfLines(PdfSheet sheet, Quote quote) {
    this.sheet = sheet;
    this.quote = quote;
    this.extendedEnd = sheet.width() - TAXED_WIDTH;
    this.unitPriceEnd = extendedEnd - 70;
    this.unit = unitPriceEnd - 92;
    this.quantityEnd = unit - 8;
  }

  /** Writes these lines under a heading. */
  void write(List<QuoteLine> lines) throws IOException {
    heading();
    for (QuoteLine line : lines) {
      if (quote.heading(line).isPresent()) {
        words(quote.heading(line).get());
      }
      line(line);
    }
  }

  /** Words above a line, on the same page as it. */
  private void words(String text) throws IOException {
    if (!sheet.hasRoom(5 * LINE)) {
      sheet.newPage();
      heading();
    }
    for (String line : wrapped(text, sheet.width())) {
      sheet.text(line, 2, SIZE, true);
      sheet.down(LINE);
    }
    sheet.down(3);
  }

  /** Writes what a group comes to, under its lines. */
  void subtotal(Group group) throws IOException {
    sheet.textEndingAt("Subtotal of " + group.number(), extendedEnd - 80, SIZE, true);
    sheet.textEndingAt(PrintedMoney.figure(quote.subtotal(group)), extendedEnd, SIZE, true);
    sheet.down(LINE + 4);
  }

  private void heading() throws IOException {
    if (!sheet.hasRoom(4 * LINE)) {
      sheet.newPage();
    }
    String currency = quote.total().getCurrencyUnit().getCode();
    sheet.rule(0, sheet.width());
    sheet.down(2);
    sheet.text("No.", 2, SIZE, true);
    sheet.text("Item", ITEM, SIZE, true);
    sheet.text("Description", DESCRIPTION, SIZE, true);
    sheet.textEndingAt("Quantity", quantityEnd, SIZE, true);
    sheet.text("Unit", unit, SIZE, true);
    sheet.textEndingAt("Unit " + currency, unitPriceEnd, SIZE, true);
    sheet.textEndingAt("Extended", extendedEnd, SIZE, true);
    sheet.textEndingAt("Tax", sheet.width() - 2, SIZE, true);
    sheet.down(LINE + 2);
    sheet.rule(0, sheet.width());
    sheet.down(2);
  }

  private void line(QuoteLine line) throws IOException {
    String words =
        line.goods().description() + line.note().map(note -> " (" + note + ")").orElse("");
    List<String> item = wrapped(line.goods().item(), DESCRIPTION - ITEM - 6);
    List<String> description = wrapped(words, quantityEnd - DESCRIPTION - 42);
    int height = Math.max(item.size(), description.size());
    if (!sheet.hasRoom(height * LINE + 6)) {
      sheet.newPage();
      heading();
    }
    sheet.text(String.valueOf(line.position()), 2, SIZE, false);
    sheet.textEndingAt(
        String.format(Locale.ROOT, "%,d", line.quantity()), quantityEnd, SIZE, false);
    sheet.text(line.goods().unit(), unit, SIZE, false);
    sheet.textEndingAt(PrintedMoney.figure(line.price().unitPrice()), unitPriceEnd, SIZE, false);
    sheet.textEndingAt(PrintedMoney.figure(line.price().extended()), extendedEnd, SIZE, false);
    sheet.textEndingAt(line.goods().taxable() ? "T" : "", sheet.width() - 8, SIZE, false);
    for (int i = 0; i < height; i++) {
      sheet.text(i < item.size() ? item.get(i) : "", ITEM, SIZE, false);
      sheet.text(i < description.size() ? description.get(i) : "", DESCRIPTION, SIZE, false);
      sheet.down(LINE);
    }
    sheet.down(2);
    sheet.rule(0, sheet.width());
    sheet.down(2);
  }

  private static List<String> wrapped(String text, double widthPt) {
    return Lettering.sans().wrap(PdfSheet.shown(text), SIZE, widthPt);
  }
}
