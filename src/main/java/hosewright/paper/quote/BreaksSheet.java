package hosewright.paper.quote;

import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetNames;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteLine.Break;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The quote's own frozen price breaks, which the first sheet looks its unit prices up in. */
public final class BreaksSheet {
  static final int[] WIDTHS = {7, 21, 50, 16, 13};

  /** The rows, both included, that hold the breaks of one quote line. */
  public record Rows(int first, int last) {

    /** A formula for the unit price at the quantity in a cell of another sheet. */
    String unitPriceAt(String quantityCell) {
      return unitPriceAt(quantityCell, SheetNames.BREAKS, "D", "E");
    }

    /** A formula for the unit price by another sheet of breaks, in these columns of it. */
    public String unitPriceAt(String quantityCell, String sheet, String quantities, String prices) {
      // Below the smallest break the first price holds.
      String quantity = "MAX(%s,%s!$%s$%d)".formatted(quantityCell, sheet, quantities, first);
      return "LOOKUP(%s,%s,%s)".formatted(quantity, range(sheet, quantities), range(sheet, prices));
    }

    private String range(String sheet, String column) {
      return "%s!$%s$%d:$%s$%d".formatted(sheet, column, first, column, last);
    }
  }

  private final Page page;

  BreaksSheet(Page page) {
    this.page = page;
  }

  /** Writes the sheet and gives the rows of each quote line, by its position. */
  Map<Integer, Rows> write(Quote quote) {
    page.next();
    page.span(0, page.lastColumn(), "Price breaks of this quote", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Net unit prices in "
            + QuoteWorkbook.currency(quote).getCode()
            + " after the customer's terms, frozen on "
            + quote.validity().date()
            + ". The unit prices of the first sheet are looked up here.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of("Line", "Item", "Description", "From quantity", "Unit price"), Set.of(3, 4));
    Map<Integer, Rows> rows = new HashMap<>();
    for (QuoteLine line : quote.itemised()) {
      rows.put(line.position(), write(line));
    }
    page.finished(heading);
    return rows;
  }

  private Rows write(QuoteLine line) {
    List<Break> breaks =
        line.price().breaks().isEmpty()
            ? List.of(new Break(1, line.price().unitPrice()))
            : line.netBreaks().stream()
                .sorted(Comparator.comparingInt(Break::minimumQuantity))
                .toList();
    int first = page.rowNumber() + 1;
    for (Break step : breaks) {
      page.next();
      page.number(0, line.position(), Look.BODY_ORDER)
          .text(1, line.goods().item(), Look.BODY)
          .text(2, line.goods().description(), Look.BODY)
          .number(3, step.minimumQuantity(), Look.BODY_COUNT)
          .money(4, step.unitPrice(), Look.BODY_MONEY);
    }
    return new Rows(first, page.rowNumber());
  }
}
