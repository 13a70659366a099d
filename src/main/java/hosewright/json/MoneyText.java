package hosewright.json;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money as {@code 12.00 USD}. */
final class MoneyText {
  private MoneyText() {}

  static String write(Money money) {
    return bare(money) + " " + money.getCurrencyUnit().getCode();
  }

  static String bare(Money money) {
    return money.getAmount().toPlainString();
  }

  /** The sum; null when the text is not one. */
  static Money parse(String text) {
    String[] parts = text.split(" ");
    return parts.length == 2 ? Money.of(CurrencyUnit.of(parts[1]), new BigDecimal(parts[0])) : null;
  }

  static Money parse(String text, CurrencyUnit currency) {
    return text.contains(" ") || currency == null
        ? parse(text)
        : Money.of(currency, new BigDecimal(text));
  }
}
