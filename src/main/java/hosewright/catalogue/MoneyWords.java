package hosewright.catalogue;

import org.joda.money.Money;

/** A sum of money as every text, paper and document writes it. */
public final class MoneyWords {
  private MoneyWords() {}

  /** Amount, then currency: {@code 12.00 USD}. */
  public static String of(Money money) {
    return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
  }
}
