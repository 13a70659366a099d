package hosewright.store.database;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money as the two columns it is kept in. */
public final class Amounts {
  private Amounts() {}

  /** Never rounds: a column holds more decimals than any currency has. */
  public static Money money(BigDecimal amount, String currency) {
    return Money.of(CurrencyUnit.of(currency), amount.stripTrailingZeros());
  }

  public static String code(Money money) {
    return money.getCurrencyUnit().getCode();
  }
}
