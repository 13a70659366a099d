package hosewright.desk.quote;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.order.SupplierAnswer;
import hosewright.quote.Earnings;
import hosewright.quote.Quote;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What a quote earns, for the dealer's eyes only. */
final class Costs {
  private Costs() {}

  /** The earnings at the costs in force on the day of the quote. */
  static Earnings earnings(Books books, Quote quote) {
    Catalogue catalogue = books.itemsOf(quote);
    List<SupplierAnswer> answers = books.orders().answers(quote.number());
    return Earnings.of(
        quote,
        line ->
            catalogue
                .cost(line.goods().item(), quote.validity().date())
                .or(
                    () ->
                        answers.stream()
                            .filter(answer -> answer.chosen())
                            .filter(answer -> answer.wanted().equals(line.goods().key()))
                            .findFirst()
                            .map(Costs::landedEach)));
  }

  private static Money landedEach(SupplierAnswer answer) {
    return answer.landed().dividedBy(answer.quantity(), RoundingMode.HALF_UP);
  }

  /** The least margin wanted of the quote's buyer. */
  static Optional<BigDecimal> floor(Books books, Quote quote) {
    return books.marginFloors().of(quote.customer());
  }
}
