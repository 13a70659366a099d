package hosewright.paper.quote;

import hosewright.line.model.Unpriced;
import hosewright.paper.drawing.LineDrawing;
import hosewright.paper.drawing.LinePicture;
import hosewright.paper.page.Picture;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.paper.sheet.SheetSetup;
import hosewright.quote.Quote;
import hosewright.quote.Quote.QuoteLine;
import hosewright.quote.terms.Dealer;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;

/** The first sheet: the quote as its buyer reads it. */
final class QuoteSheet {
  static final int[] WIDTHS = {5, 17, 50, 10, 8, 13, 15, 6};
  static final String SUBTOTAL = "quote_subtotal";
  static final String FREIGHT = "quote_freight";
  static final String TAXABLE = "quote_taxable";
  static final String TAX_RATE = "quote_tax_rate";
  static final String TAX = "quote_tax";
  static final String TOTAL = "quote_total";

  private static final int NUMBER = 0;
  private static final int ITEM = 1;
  private static final int DESCRIPTION = 2;
  private static final int QUANTITY = 3;
  private static final int UNIT = 4;
  private static final int UNIT_PRICE = 5;
  private static final int EXTENDED = 6;
  private static final int TAXED = 7;

  private final Page page;
  private final Quote quote;
  private final Dealer dealer;
  private final String currency;
  private final int decimals;

  QuoteSheet(Page page, Quote quote, Dealer dealer) {
    this.page = page;
    this.quote = quote;
    this.dealer = dealer;
    this.currency = QuoteWorkbook.currency(quote).getCode();
    this.decimals = QuoteWorkbook.currency(quote).getDecimalPlaces();
  }

  /** Writes the sheet and gives the row number of the first quote line. */
  int write(List<BreaksSheet.Rows> breaks) {
    head();
    job();
    int heading = tableHeading();
    int firstLine = heading + 1;
    for (int i = 0; i < quote.lines().size(); i++) {
      line(quote.lines().get(i), breaks.get(i));
    }
    int lastLine = page.rowNumber();
    totals(firstLine, lastLine);
    new QuoteTerms(page, quote).write();
    if (lastLine >= firstLine) {
      wholeQuantitiesOnly(firstLine, lastLine);
    }
    SheetSetup.repeated(page.sheet(), heading);
    page.finishedBelow(1);
    return firstLine;
  }

  private void head() {
    page.next();
    page.span(NUMBER, DESCRIPTION, dealer.name(), Look.NAME);
    for (int column = QUANTITY; column <= TAXED; column++) {
      page.text(column, "", Look.BANNER_TOTAL);
    }
    page.span(QUANTITY, TAXED, "", Look.BANNER_TOTAL).formula(QUANTITY, TOTAL, Look.BANNER_TOTAL);
    page.next();
    page.span(NUMBER, DESCRIPTION, String.join(", ", dealer.addressLines()), Look.TEXT);
    headFact("Quote", quote.number());
    page.named(EXTENDED, "quote_number");
    page.next();
    page.span(NUMBER, DESCRIPTION, dealer.phone() + "   " + dealer.email(), Look.TEXT);
    headFact("Revision", quote.revision() + " (" + words(quote.status().name()) + ")");
    page.next();
    page.span(NUMBER, DESCRIPTION, dealer.note(), Look.TEXT);
    headFact("Date", quote.validity().date().toString());
    page.gap(6);
    page.next();
    page.span(NUMBER, DESCRIPTION, "For " + quote.customer().name(), Look.STRONG);
    headFact("Valid until", quote.validity().validUntil().toString());
    page.next();
    page.span(NUMBER, DESCRIPTION, quote.customer().address(), Look.TEXT);
    headFact("Lead time", PrintedTerms.lead(quote));
  }

  private void headFact(String label, String value) {
    page.span(QUANTITY, UNIT_PRICE, label, Look.LABEL)
        .span(EXTENDED, TAXED, value, Look.INDENTED_STRONG);
  }

  private void job() {
    page.gap(6);
    page.next();
    page.span(NUMBER, TAXED, quote.basis().title(), Look.SECTION);
    page.next();
    page.span(NUMBER, TAXED, quote.plan().summary(), Look.TEXT);
    drawing();
    page.gap(6);
  }

  private void drawing() {
    if (quote.plan().layout().legs().isEmpty()) {
      return;
    }
    Picture drawing = LinePicture.of(quote.plan());
    double heightPt = page.widthPt(NUMBER, TAXED) * drawing.height() / drawing.width();
    page.picture(LineDrawing.png(quote.plan()), NUMBER, TAXED, heightPt);
  }

  private int tableHeading() {
    page.next();
    page.text(NUMBER, "No.", Look.HEAD_CENTRE)
        .text(ITEM, "Item", Look.HEAD)
        .text(DESCRIPTION, "Description", Look.HEAD)
        .text(QUANTITY, "Quantity", Look.HEAD_RIGHT)
        .text(UNIT, "Unit", Look.HEAD)
        .text(UNIT_PRICE, "Unit price " + currency, Look.HEAD_RIGHT)
        .text(EXTENDED, "Extended " + currency, Look.HEAD_RIGHT)
        .text(TAXED, "Tax", Look.HEAD_CENTRE);
    return page.rowNumber();
  }

  private void line(QuoteLine line, BreaksSheet.Rows breaks) {
    int row = page.next();
    String note = line.note().map(n -> "\n" + n).orElse("");
    page.number(NUMBER, line.position(), Look.BODY_ORDER)
        .text(ITEM, line.goods().item(), Look.BODY)
        .text(DESCRIPTION, line.goods().description() + note, Look.BODY)
        .number(QUANTITY, line.quantity(), Look.BODY_INPUT)
        .text(UNIT, line.goods().unit(), Look.BODY)
        .formula(UNIT_PRICE, breaks.unitPriceAt("D" + row), Look.BODY_MONEY)
        .formula(EXTENDED, round("D" + row + "*F" + row), Look.BODY_MONEY)
        .text(TAXED, line.goods().taxable() ? "T" : "", Look.BODY_CENTRE);
  }

  private void totals(int firstLine, int lastLine) {
    boolean empty = lastLine < firstLine;
    String extended = "G" + firstLine + ":G" + lastLine;
    String taxed = "H" + firstLine + ":H" + lastLine;
    total("Subtotal", SUBTOTAL, empty ? "0" : "SUM(" + extended + ")");
    page.next();
    page.span(QUANTITY, UNIT_PRICE, "Freight", Look.LABEL)
        .money(EXTENDED, quote.totals().freight(), Look.MONEY)
        .text(TAXED, quote.totals().charging().freightTaxed() ? "T" : "", Look.CENTRE)
        .named(EXTENDED, FREIGHT);
    String goods = empty ? "0" : "SUMIF(" + taxed + ",\"T\"," + extended + ")";
    total(
        "Taxable (T)",
        TAXABLE,
        quote.totals().charging().freightTaxed() ? goods + "+" + FREIGHT : goods);
    page.next();
    page.span(QUANTITY, UNIT_PRICE, "Tax rate", Look.LABEL)
        .number(EXTENDED, quote.totals().charging().taxRate(), Look.PERCENT)
        .named(EXTENDED, TAX_RATE);
    total("Tax", TAX, round(TAX_RATE + "*" + TAXABLE));
    page.next();
    page.span(
            QUANTITY,
            UNIT_PRICE,
            "Total " + currency + Unpriced.beside(quote.stillToSource()),
            Look.TOTAL_LABEL)
        .formula(EXTENDED, SUBTOTAL + "+" + FREIGHT + "+" + TAX, Look.MONEY_STRONG)
        .named(EXTENDED, TOTAL);
  }

  private void total(String label, String name, String formula) {
    page.next();
    page.span(QUANTITY, UNIT_PRICE, label, Look.LABEL)
        .formula(EXTENDED, formula, Look.MONEY)
        .named(EXTENDED, name);
  }

  private String round(String expression) {
    return "ROUND(" + expression + "," + decimals + ")";
  }

  private void wholeQuantitiesOnly(int firstLine, int lastLine) {
    DataValidationHelper helper = page.sheet().getDataValidationHelper();
    DataValidation rule =
        helper.createValidation(
            helper.createIntegerConstraint(OperatorType.BETWEEN, "0", "1000000"),
            new CellRangeAddressList(firstLine - 1, lastLine - 1, QUANTITY, QUANTITY));
    rule.setShowErrorBox(true);
    rule.createErrorBox("Quantity", "Give a whole number from 0 to 1,000,000.");
    page.sheet().addValidationData(rule);
  }

  private static String words(String constant) {
    return constant.toLowerCase(Locale.ROOT);
  }
}
