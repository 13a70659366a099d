package hosewright.csv;

import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Sees to it that files which are added up together are in one currency. */
public final class OneCurrency {
  private Optional<CurrencyUnit> currency;

  /**
   * @param currency the currency already settled; empty when the first row settles it
   */
  public OneCurrency(Optional<CurrencyUnit> currency) {
    this.currency = currency;
  }

  /** Refuses a sound row in another currency than the rows before it. */
  public void hold(CsvRow row, CurrencyUnit given) {
    if (!row.sound()) {
      return;
    }
    if (currency.isEmpty()) {
      currency = Optional.of(given);
    } else if (!currency.get().equals(given)) {
      row.refuse(
          "currency",
          "all amounts are in one currency, " + currency.get(),
          currency.get().getCode());
    }
  }
}
