package hosewright.quote.life;

import hosewright.quote.Quote;
import java.time.Instant;
import java.time.LocalDate;
import org.joda.money.Money;

/** What a list of quotes shows of each, without reading the quote itself. */
public record QuoteHeading(
    Quote.Name name, Quote.Status status, Buyer buyer, Days days, String title, Money total) {

  /** The number of the quote. */
  public String number() {
    return name.number();
  }

  /** The revision listed. */
  public int revision() {
    return name.revision();
  }

  /** Who it is for. */
  public record Buyer(String customerId, String customerName) {}

  /** When it was made and how long its prices hold. */
  public record Days(LocalDate date, LocalDate validUntil, Instant madeAt) {}
}
