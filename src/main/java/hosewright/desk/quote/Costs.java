package hosewright.desk.quote;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.order.SupplierAnswer;
import hosewright.quote.Earnings;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.terms.Rates;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a quote earns, for the dealer's eyes only. */
final class Costs {
  private Costs() {}

  /** The earnings at the costs and rates in force on the day of the quote. */
  static Earnings earnings(Books books, Quote quote) {
    Catalogue catalogue = books.itemsOf(quote);
    List<SupplierAnswer> answers = books.orders().answers(quote.number());
    Rates rates = books.rates().load();
    LocalDate day = quote.validity().date();
    CurrencyUnit currency = quote.total().getCurrencyUnit();
    return Earnings.of(
        quote,
        line ->
            cost(line, catalogue, answers, day)
                .map(cost -> rates.convert(cost, currency, day).orElse(cost)));
  }

  private static Optional<Money> cost(
      QuoteLine line, Catalogue catalogue, List<SupplierAnswer> answers, LocalDate day) {
    return catalogue
        .cost(line.goods().item(), day)
        .or(
            () ->
                answers.stream()
                    .filter(answer -> answer.chosen())
                    .filter(answer -> answer.wanted().equals(line.goods().key()))
                    .findFirst()
                    .map(Costs::landedEach));
  }

  private static Money landedEach(SupplierAnswer answer) {
    return answer.landed().dividedBy(answer.quantity(), RoundingMode.HALF_UP);
  }

  /** The least margin wanted of the quote's buyer. */
  static Optional<BigDecimal> floor(Books books, Quote quote) {
    return books.marginFloors().of(quote.customer());
  }
}
