package hosewright.quote.terms;

import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A net price agreed with one customer for one item between two dates.
 *
 * @param customer customer id
 * @param item item number
 * @param from first day in force
 * @param until last day in force; empty while open
 * @param unitPrice net price of one unit
 */
public record ContractPrice(
    String customer, String item, LocalDate from, Optional<LocalDate> until, Money unitPrice) {

  public boolean inForceOn(LocalDate date) {
    return !date.isBefore(from) && (until.isEmpty() || !date.isAfter(until.get()));
  }
}
