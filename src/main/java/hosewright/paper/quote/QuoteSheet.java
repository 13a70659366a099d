package hosewright.paper.quote;

import static hosewright.paper.quote.QuoteTable.DESCRIPTION;
import static hosewright.paper.quote.QuoteTable.EXTENDED;
import static hosewright.paper.quote.QuoteTable.NUMBER;
import static hosewright.paper.quote.QuoteTable.QUANTITY;
import static hosewright.paper.quote.QuoteTable.TAXED;
import static hosewright.paper.quote.QuoteTable.UNIT_PRICE;

import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.terms.Dealer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;

/** The first sheet: the quote as its buyer reads it. */
final class QuoteSheet {
  static final int[] WIDTHS = {5, 18, 52, 10, 7, 11, 12, 5};
  static final String SUBTOTAL = "quote_subtotal";
  static final String FREIGHT = "quote_freight";
  static final String TAXABLE = "quote_taxable";
  static final String TAX_RATE = "quote_tax_rate";
  static final String TAX = "quote_tax";
  static final String TOTAL = "quote_total";

  private final Page page;
  private final Quote quote;
  private final Dealer dealer;
  private final String currency;
  private final int decimals;
  private final QuoteTable table;

  QuoteSheet(Page page, Quote quote, Dealer dealer) {
    this.page = page;
    this.quote = quote;
    this.dealer = dealer;
    this.currency = QuoteWorkbook.currency(quote).getCode();
    this.decimals = QuoteWorkbook.currency(quote).getDecimalPlaces();
    this.table = new QuoteTable(page, quote);
  }

  void write() {
    head();
    job();
    int first = page.rowNumber() + 1;
    table.inTotal(sum -> totals(sum, first, page.rowNumber()));
    table.besides();
    table.prices();
    new QuoteTerms(page, quote).write();
    wholeQuantitiesOnly(table.rows().values());
    page.finishedBelow(1);
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
    DraftMark.of(quote)
        .ifPresentOrElse(
            mark -> {
              page.next();
              page.span(NUMBER, TAXED, mark, Look.STRONG);
            },
            () -> page.gap(6));
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
    if (quote.groups().size() == 1) {
      Group only = quote.groups().get(0);
      page.span(NUMBER, TAXED, GroupWords.summary(only), Look.TEXT);
      table.drawing(only);
    } else {
      page.span(NUMBER, TAXED, "A purchase of " + quote.groups().size() + " groups.", Look.TEXT);
    }
    page.gap(6);
  }

  private void totals(String subtotal, int firstLine, int lastLine) {
    boolean empty = lastLine < firstLine;
    String extended = "G" + firstLine + ":G" + lastLine;
    String taxed = "H" + firstLine + ":H" + lastLine;
    total("Subtotal", SUBTOTAL, subtotal);
    page.next();
    page.span(QUANTITY, UNIT_PRICE, "Freight", Look.LABEL)
        .text(TAXED, quote.totals().charging().freightTaxed() ? "T" : "", Look.CENTRE);
    freight();
    String goods = empty ? "0" : "SUMIF(" + taxed + ",\"T\"," + extended + ")";
    total(
        "Taxable (T)",
        TAXABLE,
        quote.totals().charging().freightTaxed() ? "SUM(" + goods + "," + FREIGHT + ")" : goods);
    page.next();
    page.span(QUANTITY, UNIT_PRICE, "Tax rate", Look.LABEL)
        .number(EXTENDED, quote.totals().charging().taxRate(), Look.PERCENT)
        .named(EXTENDED, TAX_RATE);
    total("Tax", TAX, round(TAX_RATE + "*" + TAXABLE));
    page.next();
    page.span(QUANTITY, UNIT_PRICE, "Total " + currency + quote.besideTotal(), Look.TOTAL_LABEL)
        .formula(EXTENDED, sum(SUBTOTAL, FREIGHT, TAX), Look.MONEY_STRONG)
        .named(EXTENDED, TOTAL);
  }

  /** A sum leaves words out, so that an amount typed over "to be quoted" is counted. */
  private void freight() {
    quote
        .totals()
        .knownFreight()
        .ifPresentOrElse(
            known -> page.money(EXTENDED, known, Look.MONEY),
            () -> page.text(EXTENDED, "to be quoted", Look.MONEY));
    page.named(EXTENDED, FREIGHT);
  }

  private static String sum(String... names) {
    return "SUM(" + String.join(",", names) + ")";
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

  private void wholeQuantitiesOnly(Collection<Integer> rows) {
    if (rows.isEmpty()) {
      return;
    }
    CellRangeAddressList quantities = new CellRangeAddressList();
    runs(rows)
        .forEach(run -> quantities.addCellRangeAddress(run[0] - 1, QUANTITY, run[1] - 1, QUANTITY));
    DataValidationHelper helper = page.sheet().getDataValidationHelper();
    DataValidation rule =
        helper.createValidation(
            helper.createIntegerConstraint(OperatorType.BETWEEN, "0", "1000000"), quantities);
    rule.setShowErrorBox(true);
    rule.createErrorBox("Quantity", "Give a whole number from 0 to 1,000,000.");
    page.sheet().addValidationData(rule);
  }

  /** Rows that follow one another, as the first and the last of each run. */
  private static List<int[]> runs(Collection<Integer> rows) {
    List<int[]> runs = new ArrayList<>();
    for (int row : rows) {
      if (!runs.isEmpty() && runs.get(runs.size() - 1)[1] == row - 1) {
        runs.get(runs.size() - 1)[1] = row;
      } else {
        runs.add(new int[] {row, row});
      }
    }
    return runs;
  }

  private static String words(String constant) {
    return constant.toLowerCase(Locale.ROOT);
  }
}
