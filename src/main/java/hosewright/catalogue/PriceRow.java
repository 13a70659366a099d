package hosewright.catalogue;

import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A list price in force between two dates, from a quantity up.
 *
 * @param item item number
 * @param from first day in force
 * @param until last day in force; empty while open
 * @param minimumQuantity quantity from which this price holds, 1 for the base price
 * @param unitPrice price of one unit
 */
public record PriceRow(
    String item, LocalDate from, Optional<LocalDate> until, int minimumQuantity, Money unitPrice) {

  public boolean inForceOn(LocalDate date) {
    return !date.isBefore(from) && (until.isEmpty() || !date.isAfter(until.get()));
  }
}
