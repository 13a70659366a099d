package hosewright.fleet.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.Money;

/**
 * Money over years, by the usual convention: a year's spending falls at its end, and the first
 * year's is at the first year's prices.
 *
 * <p>Source: Blank and Tarquin, Engineering Economy, 6th ed., chapter 2 (single payment, geometric
 * gradient).
 */
public final class PresentValue {
  private static final MathContext EXACT = MathContext.DECIMAL128;

  private PresentValue() {}

  /** Today's worth of amounts spent at the end of year 1, 2 and so on, rounded half-up once. */
  public static Money of(List<Money> byYear, BigDecimal rate) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal factor = BigDecimal.ONE;
    for (Money amount : byYear) {
      factor = factor.divide(BigDecimal.ONE.add(rate), EXACT);
      sum = sum.add(amount.getAmount().multiply(factor, EXACT), EXACT);
    }
    return Money.of(byYear.get(0).getCurrencyUnit(), sum, RoundingMode.HALF_UP);
  }

  /** What costs {@code now} in year 1 costs in a later year, rounded half-up. */
  public static Money escalated(Money now, BigDecimal rate, int year) {
    return now.multipliedBy(BigDecimal.ONE.add(rate).pow(year - 1, EXACT), RoundingMode.HALF_UP);
  }
}
