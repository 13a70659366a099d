package hosewright.catalogue;

import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/** What a supplier charges us for one unit of an item between two dates. */
public record CostRow(
    String item, String supplier, LocalDate from, Optional<LocalDate> until, Money unitCost) {

  public boolean inForceOn(LocalDate date) {
    return !date.isBefore(from) && (until.isEmpty() || !date.isAfter(until.get()));
  }
}
