package hosewright.quote;

import java.time.Instant;
import java.time.LocalDate;
import org.joda.money.Money;

/** What a list of quotes shows of each, without reading the quote itself. */
public record QuoteHeading(
    String number,
    int revision,
    Quote.Status status,
    String customerId,
    String customerName,
    LocalDate date,
    LocalDate validUntil,
    String title,
    Money total,
    Instant madeAt) {}
