package hosewright.quote;

import hosewright.quote.QuoteLine.Break;
import java.util.Comparator;
import org.joda.money.Money;

/** What the groups of a quote save by being bought together, from the quote's own frozen breaks. */
final class BoughtTogether {
  private BoughtTogether() {}

  /** What its lines would cost more if each group were bought by itself; zero of one group. */
  static Money saved(Quote quote) {
    return quote.lines().stream()
        .map(line -> saved(quote, line))
        .reduce(Money.zero(quote.total().getCurrencyUnit()), Money::plus);
  }

  private static Money saved(Quote quote, QuoteLine line) {
    if (line.goods().item().isEmpty()) {
      return Money.zero(quote.total().getCurrencyUnit());
    }
    Money byItself = at(line, quantity(quote, line, true));
    Money together = at(line, quantity(quote, line, false));
    return byItself.minus(together).multipliedBy(line.quantity());
  }

  /** How many of a line's item its own group has, or the whole total. */
  private static int quantity(Quote quote, QuoteLine line, boolean ownGroup) {
    return quote.lines().stream()
        .filter(other -> other.goods().item().equals(line.goods().item()))
        .filter(other -> !ownGroup || other.group() == line.group())
        .mapToInt(QuoteLine::quantity)
        .sum();
  }

  private static Money at(QuoteLine line, int quantity) {
    return line.netBreaks().stream()
        .filter(step -> step.minimumQuantity() <= quantity)
        .max(Comparator.comparingInt(Break::minimumQuantity))
        .map(Break::unitPrice)
        .orElse(line.price().unitPrice());
  }
}
