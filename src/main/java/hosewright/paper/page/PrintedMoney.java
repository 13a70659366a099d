package hosewright.paper.page;

import java.util.Locale;
import org.joda.money.Money;

/** A sum of money as every paper writes it; workbooks format their numbers alike. */
public final class PrintedMoney {
  private PrintedMoney() {}

  /** With its thousands parted, where the currency stands elsewhere: {@code 1,234.50}. */
  public static String figure(Money money) {
    return String.format(Locale.ROOT, "%,." + money.getScale() + "f", money.getAmount());
  }

  /** With its currency: {@code 1,234.50 USD}. */
  public static String words(Money money) {
    return figure(money) + " " + money.getCurrencyUnit().getCode();
  }
}
