package hosewright.paper.quote;

import hosewright.paper.drawing.LineDrawing;
import hosewright.paper.drawing.LinePicture;
import hosewright.paper.page.Picture;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteLine.Break;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * The itemised lines of the first sheet. Of a quote of several groups each stands under its title
 * with its own drawing and subtotal; unit prices look up the quantity of the whole quote.
 */
final class QuoteTable {
  static final int NUMBER = 0;
  static final int ITEM = 1;
  static final int DESCRIPTION = 2;
  static final int QUANTITY = 3;
  static final int UNIT = 4;
  static final int UNIT_PRICE = 5;
  static final int EXTENDED = 6;
  static final int TAXED = 7;

  /** Room for the last line of a table and what it comes to, points. */
  private static final double WITH_TOTALS_PT = 9 * 16;

  private static final double WITH_SUBTOTAL_PT = 4 * 16;

  private final Page page;
  private final Quote quote;
  private final int decimals;

  /** Rows of the lines written, by the lines' positions. */
  private final Map<Integer, Integer> rows = new LinkedHashMap<>();

  QuoteTable(Page page, Quote quote) {
    this.page = page;
    this.quote = quote;
    this.decimals = QuoteWorkbook.currency(quote).getDecimalPlaces();
  }

  /** Rows of the lines written so far, by the lines' positions. */
  Map<Integer, Integer> rows() {
    return rows;
  }

  private void heading() {
    String currency = QuoteWorkbook.currency(quote).getCode();
    page.next();
    page.text(NUMBER, "No.", Look.HEAD_CENTRE)
        .text(ITEM, "Item", Look.HEAD)
        .text(DESCRIPTION, "Description", Look.HEAD)
        .text(QUANTITY, "Quantity", Look.HEAD_RIGHT)
        .text(UNIT, "Unit", Look.HEAD)
        .text(UNIT_PRICE, "Unit " + currency, Look.HEAD_RIGHT)
        .text(EXTENDED, "Extended", Look.HEAD_RIGHT)
        .text(TAXED, "Tax", Look.HEAD_CENTRE);
  }

  /**
   * Writes the lines of the total, the last of them on one printed page with the totals.
   *
   * @param totals writes these from the formula of the lines' sum
   */
  void inTotal(Consumer<String> totals) {
    if (quote.groups().size() == 1) {
      int last = quote.lines().size() - 1;
      heading();
      quote.lines().subList(0, Math.max(0, last)).forEach(this::line);
      page.together(
          () -> {
            headedAnew(WITH_TOTALS_PT);
            if (last >= 0) {
              line(quote.lines().get(last));
            }
            totals.accept(last < 0 ? "0" : "SUM(G%d:G%d)".formatted(firstRow(), page.rowNumber()));
          });
      return;
    }
    String sum =
        quote.groups().stream()
            .filter(group -> !group.optional())
            .map(group -> "G" + group(group))
            .collect(Collectors.joining("+"));
    page.together(
        () -> {
          page.gap(6);
          totals.accept(sum.isEmpty() ? "0" : sum);
        });
  }

  /** Writes the groups that the buyer may have beside the total. */
  void besides() {
    List<Group> optional = quote.groups().stream().filter(Group::optional).toList();
    if (optional.isEmpty()) {
      return;
    }
    page.gap(8);
    page.next();
    page.span(NUMBER, TAXED, "You may also have, not in the total", Look.SECTION);
    optional.forEach(this::group);
  }

  /** Has each unit price look up its break, now that the rows of all lines are known. */
  void prices() {
    rows.forEach(
        (position, row) -> {
          QuoteLine line = line(position);
          page.formulaAt(row, UNIT_PRICE, unitPrice(line));
        });
  }

  /** The price breaks stand in the formula, which may be read in the cell. */
  private String unitPrice(QuoteLine line) {
    List<Break> breaks =
        line.netBreaks().stream().sorted(Comparator.comparingInt(Break::minimumQuantity)).toList();
    if (breaks.size() < 2) {
      Money only = breaks.isEmpty() ? line.price().unitPrice() : breaks.get(0).unitPrice();
      return only.getAmount().toPlainString();
    }
    // Below the smallest break the first price holds.
    return "LOOKUP(MAX(%s,%d),{%s},{%s})"
        .formatted(
            quantityOf(line),
            breaks.get(0).minimumQuantity(),
            listed(breaks, step -> String.valueOf(step.minimumQuantity())),
            listed(breaks, step -> step.unitPrice().getAmount().toPlainString()));
  }

  private static String listed(List<Break> breaks, Function<Break, String> figure) {
    return breaks.stream().map(figure).collect(Collectors.joining(","));
  }

  /** The first row of a line. */
  int firstRow() {
    return rows.values().stream().mapToInt(Integer::intValue).min().orElseThrow();
  }

  /** The cells that together hold how many of a line's item the quote has. */
  private String quantityOf(QuoteLine line) {
    if (line.goods().item().isEmpty()) {
      return "D" + rows.get(line.position());
    }
    return Stream.concat(
            quote.lines().stream()
                .filter(other -> other.position() != line.position())
                .filter(other -> other.goods().item().equals(line.goods().item())),
            Stream.of(line))
        .map(QuoteLine::position)
        .sorted()
        .map(position -> "D" + rows.get(position))
        .collect(Collectors.joining("+"));
  }

  private QuoteLine line(int position) {
    return quote.itemised().stream()
        .filter(line -> line.position() == position)
        .findFirst()
        .orElseThrow();
  }

  /** Writes a group and gives the row of its subtotal. */
  private int group(Group group) {
    List<QuoteLine> lines = quote.lines(group);
    page.together(
        () -> {
          page.gap(6);
          page.next();
          page.span(NUMBER, TAXED, group.number() + ". " + group.heading().words(), Look.SECTION);
          page.next();
          page.span(NUMBER, TAXED, GroupWords.summary(group), Look.TEXT);
          drawing(group);
          heading();
          lines.stream().limit(1).forEach(this::line);
        });
    lines.stream().skip(1).limit(Math.max(0, lines.size() - 2)).forEach(this::line);
    page.together(
        () -> {
          headedAnew(WITH_SUBTOTAL_PT);
          lines.stream().skip(1).skip(Math.max(0, lines.size() - 2)).forEach(this::line);
          subtotal(group, lines);
        });
    return page.rowNumber();
  }

  private void subtotal(Group group, List<QuoteLine> lines) {
    page.next();
    String sum =
        lines.isEmpty()
            ? "0"
            : "SUM(G%d:G%d)"
                .formatted(
                    rows.get(lines.get(0).position()),
                    rows.get(lines.get(lines.size() - 1).position()));
    page.span(QUANTITY, UNIT_PRICE, "Subtotal of " + group.number(), Look.LABEL)
        .formula(EXTENDED, sum, Look.MONEY)
        .named(EXTENDED, QuoteSheet.SUBTOTAL + "_" + group.number());
  }

  /** The drawing of what a group lays, where it lays anything. */
  void drawing(Group group) {
    if (!group.laid()) {
      return;
    }
    for (Picture piece : LinePicture.pieces(group.plan())) {
      double heightPt = page.widthPt(NUMBER, TAXED) * piece.height() / piece.width();
      page.picture(LineDrawing.png(piece), NUMBER, TAXED, heightPt);
    }
    if (quote.groups().size() > 1) {
      page.gap(6);
    }
  }

  private void line(QuoteLine line) {
    String words = line.goods().description() + line.note().map(n -> "\n" + n).orElse("");
    headedAnew(heightPt(line, words));
    quote
        .heading(line)
        .ifPresent(
            heading -> {
              page.next();
              page.span(NUMBER, TAXED, heading, Look.STRONG);
            });
    int row = page.next();
    rows.put(line.position(), row);
    page.number(NUMBER, line.position(), Look.BODY_ORDER)
        .text(ITEM, line.goods().item(), Look.BODY)
        .text(DESCRIPTION, words, Look.BODY)
        .number(QUANTITY, line.quantity(), Look.BODY_INPUT)
        .text(UNIT, line.goods().unit(), Look.BODY)
        .text(UNIT_PRICE, "", Look.BODY_MONEY)
        .formula(EXTENDED, "ROUND(D" + row + "*F" + row + "," + decimals + ")", Look.BODY_MONEY)
        .text(TAXED, line.goods().taxable() ? "T" : "", Look.BODY_CENTRE);
  }

  /** A heading on a page of its own; one that every page repeats would also stand over no lines. */
  private void headedAnew(double wantedPt) {
    if (!page.hasRoom(wantedPt)) {
      page.newSheetOfPaper();
      heading();
    }
  }

  private double heightPt(QuoteLine line, String words) {
    double above = quote.heading(line).isPresent() ? page.heightPt("x", Look.STRONG, NUMBER) : 0;
    return above
        + Math.max(
            page.heightPt(line.goods().item(), Look.BODY, ITEM),
            page.heightPt(words, Look.BODY, DESCRIPTION));
  }
}
