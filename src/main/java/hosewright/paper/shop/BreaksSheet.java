package hosewright.paper.shop;

import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteLine.Break;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** The quote's own frozen price breaks. */
final class BreaksSheet {
  static final int[] WIDTHS = {7, 21, 50, 16, 13};

  private final Page page;

  BreaksSheet(Page page) {
    this.page = page;
  }

  void write(Quote quote) {
    page.next();
    page.span(0, page.lastColumn(), "Price breaks of this quote", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Net unit prices in "
            + quote.total().getCurrencyUnit().getCode()
            + " after the customer's terms, frozen on "
            + quote.validity().date()
            + ". The unit prices of the customer's workbook follow them.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of("Line", "Item", "Description", "From quantity", "Unit price"), Set.of(3, 4));
    quote.itemised().forEach(this::write);
    page.finished(heading);
  }

  private void write(QuoteLine line) {
    List<Break> breaks =
        line.price().breaks().isEmpty()
            ? List.of(new Break(1, line.price().unitPrice()))
            : line.netBreaks().stream()
                .sorted(Comparator.comparingInt(Break::minimumQuantity))
                .toList();
    for (Break step : breaks) {
      page.next();
      page.number(0, line.position(), Look.BODY_ORDER)
          .text(1, line.goods().item(), Look.BODY)
          .text(2, line.goods().description(), Look.BODY)
          .number(3, step.minimumQuantity(), Look.BODY_COUNT)
          .money(4, step.unitPrice(), Look.BODY_MONEY);
    }
  }
}
