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
import java.util.function.Function;

/** The itemised table of a quote on PDF pages, its heading repeated on each. */
final class PdfLines {
  static final double TAXED_WIDTH = 22;

  private static final double SIZE = 8.5;
  private static final double LINE = SIZE * 1.25;
  private static final double ITEM = 22;
  private static final double LONGEST_ITEM = 110;
  private static final double GAP = 9;

  private final PdfSheet sheet;
  private final Quote quote;
  private final double extendedEnd;
  private final double unitPriceEnd;
  private final double unit;
  private final double quantityEnd;
  private final double description;
  private final double descriptionWide;

  PdfLines(PdfSheet sheet, Quote quote) {
    this.sheet = sheet;
    this.quote = quote;
    List<QuoteLine> all = quote.itemised();
    this.extendedEnd = sheet.width() - TAXED_WIDTH;
    this.unitPriceEnd =
        extendedEnd
            - widest(all, "Extended", line -> PrintedMoney.figure(line.price().extended()))
            - GAP;
    double unitPriceWide =
        widest(all, unitHeading(), line -> PrintedMoney.figure(line.price().unitPrice()));
    this.unit =
        unitPriceEnd - unitPriceWide - GAP - widest(all, "Unit", line -> line.goods().unit());
    this.quantityEnd = unit - GAP / 2;
    double quantityWide = widest(all, "Qty", line -> quantity(line));
    this.description =
        ITEM + Math.min(LONGEST_ITEM, widest(all, "Item", line -> line.goods().item())) + GAP;
    this.descriptionWide = quantityEnd - quantityWide - GAP - description;
  }

  /** How wide the widest cell of a column is, its heading included, points. */
  private static double widest(
      List<QuoteLine> lines, String heading, Function<QuoteLine, String> cell) {
    double cells =
        lines.stream()
            .map(cell)
            .mapToDouble(text -> Lettering.sans().widthPt(PdfSheet.shown(text), SIZE))
            .max()
            .orElse(0);
    return Math.max(cells, Lettering.sans().widthPt(heading, SIZE));
  }

  private static String quantity(QuoteLine line) {
    return String.format(Locale.ROOT, "%,d", line.quantity());
  }

  private String unitHeading() {
    return "Unit " + quote.total().getCurrencyUnit().getCode();
  }

  /**
   * Writes these lines under a heading.
   *
   * @param belowPt room wanted below the last of them on its page, points
   */
  void write(List<QuoteLine> lines, double belowPt) throws IOException {
    heading();
    for (QuoteLine line : lines) {
      if (line == lines.get(lines.size() - 1) && !sheet.hasRoom(heightPt(line) + belowPt)) {
        sheet.newPage();
        heading();
      }
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
    sheet.rule(0, sheet.width());
    sheet.down(2);
    sheet.text("No.", 2, SIZE, true);
    sheet.text("Item", ITEM, SIZE, true);
    sheet.text("Description", description, SIZE, true);
    sheet.textEndingAt("Qty", quantityEnd, SIZE, true);
    sheet.text("Unit", unit, SIZE, true);
    sheet.textEndingAt(unitHeading(), unitPriceEnd, SIZE, true);
    sheet.textEndingAt("Extended", extendedEnd, SIZE, true);
    sheet.textEndingAt("Tax", sheet.width() - 2, SIZE, true);
    sheet.down(LINE + 2);
    sheet.rule(0, sheet.width());
    sheet.down(2);
  }

  private static String words(QuoteLine line) {
    return line.goods().description() + line.note().map(note -> " (" + note + ")").orElse("");
  }

  private double heightPt(QuoteLine line) {
    int above = quote.heading(line).map(text -> wrapped(text, sheet.width()).size()).orElse(0);
    return (above + wrapped(words(line), descriptionWide).size()) * LINE + 10;
  }

  private void line(QuoteLine line) throws IOException {
    String words = words(line);
    List<String> item = wrapped(line.goods().item(), description - ITEM - GAP + 0.1);
    List<String> described = wrapped(words, descriptionWide);
    int height = Math.max(item.size(), described.size());
    if (!sheet.hasRoom(height * LINE + 6)) {
      sheet.newPage();
      heading();
    }
    sheet.text(String.valueOf(line.position()), 2, SIZE, false);
    sheet.textEndingAt(quantity(line), quantityEnd, SIZE, false);
    sheet.text(line.goods().unit(), unit, SIZE, false);
    sheet.textEndingAt(PrintedMoney.figure(line.price().unitPrice()), unitPriceEnd, SIZE, false);
    sheet.textEndingAt(PrintedMoney.figure(line.price().extended()), extendedEnd, SIZE, false);
    sheet.textEndingAt(line.goods().taxable() ? "T" : "", sheet.width() - 8, SIZE, false);
    for (int i = 0; i < height; i++) {
      sheet.text(i < item.size() ? item.get(i) : "", ITEM, SIZE, false);
      sheet.text(i < described.size() ? described.get(i) : "", description, SIZE, false);
      sheet.down(LINE);
    }
    sheet.down(1.5);
    sheet.rule(0, sheet.width());
    sheet.down(1.5);
  }

  private static List<String> wrapped(String text, double widthPt) {
    return Lettering.sans().wrap(PdfSheet.shown(text), SIZE, widthPt);
  }
}
