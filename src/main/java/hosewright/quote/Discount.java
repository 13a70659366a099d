package hosewright.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * So much off the price of one line, after the customer's terms.
 *
 * @param fraction over 0 and under 1, for example 0.05 for 5 %
 * @param reason why it is given; it is printed on the quote
 */
public record Discount(BigDecimal fraction, String reason) {

  /** The price of one unit, rounded half-up to the cent. */
  public Money off(Money price) {
    return price.multipliedBy(BigDecimal.ONE.subtract(fraction), RoundingMode.HALF_UP);
  }

  /** As it stands on papers: {@code 5 % off: first order}. */
  public String words() {
    return fraction.movePointRight(2).stripTrailingZeros().toPlainString() + " % off: " + reason;
  }
}
