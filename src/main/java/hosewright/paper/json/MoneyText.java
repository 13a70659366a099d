package hosewright.paper.json;

import hosewright.catalogue.MoneyWords;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money as {@code 12.00 USD}. */
final class MoneyText {
  private MoneyText() {}

  static String write(Money money) {
    return MoneyWords.of(money);
  }

  static String bare(Money money) {
    return money.getAmount().toPlainString();
  }

  /** The sum; null when the text is not one. */
  static Money parse(String text) {
    int space = text.indexOf(' ');
    return space < 0
        ? null
        : Money.of(
            CurrencyUnit.of(text.substring(space + 1)), new BigDecimal(text.substring(0, space)));
  }

  /** The sum, in this currency where the text names none; null when neither does. */
  static Money parse(String text, CurrencyUnit currency) {
    return text.contains(" ") || currency == null
        ? parse(text)
        : Money.of(currency, new BigDecimal(text));
  }
}
