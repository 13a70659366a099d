package hosewright.store;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money as the two columns it is kept in. */
final class Amounts {
  private Amounts() {}

  /** Never rounds: a column holds more decimals than any currency has. */
  static Money money(BigDecimal amount, String currency) {
    return Money.of(CurrencyUnit.of(currency), amount.stripTrailingZeros());
  }

  static String code(Money money) {
    return money.getCurrencyUnit().getCode();
  }
}
