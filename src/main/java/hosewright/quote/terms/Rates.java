package hosewright.quote.terms;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What other currencies are worth, from day to day. Immutable. */
public record Rates(List<ExchangeRate> rates) {

  public Rates {
    rates = List.copyOf(rates);
  }

  /**
   * What one unit of a currency is worth.
   *
   * @param into the currency it is worth so much of
   * @param from first day in force; it ends where a later one begins
   * @param source where the figure is from
   */
  public record ExchangeRate(
      CurrencyUnit currency, CurrencyUnit into, LocalDate from, BigDecimal rate, String source) {}

  /** The rate in force on a day; empty where none is. */
  public Optional<BigDecimal> of(CurrencyUnit currency, CurrencyUnit into, LocalDate day) {
    return rates.stream()
        .filter(one -> one.currency().equals(currency) && one.into().equals(into))
        .filter(one -> !one.from().isAfter(day))
        .max(Comparator.comparing(ExchangeRate::from))
        .map(ExchangeRate::rate);
  }

  /** A sum in another currency, rounded half-up to its smallest coin; empty without a rate. */
  public Optional<Money> convert(Money sum, CurrencyUnit into, LocalDate day) {
    return sum.getCurrencyUnit().equals(into)
        ? Optional.of(sum)
        : of(sum.getCurrencyUnit(), into, day)
            .map(rate -> sum.convertedTo(into, rate, RoundingMode.HALF_UP));
  }
}
