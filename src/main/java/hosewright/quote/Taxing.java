package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.TaxTable.Charge;
import hosewright.quote.terms.TaxTable.TaxRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;

/**
 * What tax a quote is charged: that of the place the goods are shipped to, on the day of the quote,
 * or the customer's own where no place is named. An exempt customer pays none.
 *
 * @param charge what is charged
 * @param note the rate's name and place, or why no tax is charged
 */
record Taxing(Charge charge, String note) {

  /**
   * The tax of a draft.
   *
   * @throws hosewright.problem.BadInputException when the place has no rate in force on the day
   */
  static Taxing of(QuoteMaker.Draft draft, DealerTerms dealer) {
    Customer customer = draft.customer();
    boolean onFreight = dealer.setting("tax_on_freight").filter("yes"::equals).isPresent();
    Charge own =
        new Charge(
            customer.taxation().taxName(), customer.taxation().taxRate(), onFreight, Set.of());
    Taxing due =
        draft
            .amendments()
            .shipping()
            .shipTo()
            .map(place -> at(dealer.taxes().of(place, draft.date())))
            .orElseGet(() -> new Taxing(own, words(own)));
    return customer
        .taxation()
        .exemption()
        .map(
            exempt ->
                new Taxing(
                    free(due.charge()),
                    "exempt: certificate " + exempt.certificate() + " of " + exempt.dated()))
        .orElse(due);
  }

  private static Taxing at(TaxRow row) {
    return new Taxing(row.charge(), words(row.charge()) + ", shipped to " + row.place());
  }

  private static Charge free(Charge charge) {
    return new Charge(charge.name(), BigDecimal.ZERO, charge.onFreight(), charge.untaxed());
  }

  private static String words(Charge charge) {
    return charge.name()
        + " "
        + charge.rate().movePointRight(2).stripTrailingZeros().toPlainString()
        + " %";
  }

  /** The lines, each marked whether it is taxed. */
  List<QuoteLine> marked(List<QuoteLine> lines, Catalogue catalogue) {
    return lines.stream().map(line -> taxes(line, catalogue) ? line : line.untaxed()).toList();
  }

  /** Whether a line is taxed; free text is. */
  boolean taxes(QuoteLine line, Catalogue catalogue) {
    return charge.taxes(
        line.goods().item(),
        catalogue.item(line.goods().item()).map(item -> item.kind().word()).orElse(""));
  }

  /** The tax on lines that are marked, and on freight where it is taxed, rounded half-up once. */
  Money on(List<QuoteLine> lines, Money freight) {
    Money none = freight.multipliedBy(0);
    Money goods =
        lines.stream()
            .filter(line -> line.goods().taxable())
            .map(line -> line.price().extended())
            .reduce(none, Money::plus);
    return goods
        .plus(charge.onFreight() ? freight : none)
        .multipliedBy(charge.rate(), RoundingMode.HALF_UP);
  }
}
