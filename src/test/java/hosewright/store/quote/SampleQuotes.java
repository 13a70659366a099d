package hosewright.store.quote;

import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.LinePlan;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.Totals;
import hosewright.quote.life.QuoteCodec;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.Customer;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Quotes that differ in number, revision, status and title only. */
public final class SampleQuotes {
  private static final LocalDate DATE = LocalDate.of(2026, 3, 2);
  private static final Money ZERO = Money.zero(CurrencyUnit.USD);

  /** Writes what differs; a quote read from anything else than its own document is another one. */
  public static final QuoteCodec CODEC =
      new QuoteCodec() {
        @Override
        public String write(Quote quote) {
          return String.join(
              "|",
              quote.number(),
              String.valueOf(quote.revision()),
              quote.status().name(),
              quote.basis().title());
        }

        @Override
        public Quote read(String document) {
          String[] parts = document.split("\\|", 4);
          return quote(parts[0], Integer.parseInt(parts[1]), parts[3])
              .withStatus(Quote.Status.valueOf(parts[2]));
        }
      };

  private SampleQuotes() {}

  /** A new quote that was issued and accepted. */
  public static Quote accepted(StoredQuotes quotes, Instant when) {
    Quote draft = quotes.saveNew(number -> quote(number, 1, "Quay"), signed(Step.MAKE, when));
    Quote issued = quotes.issue(draft, DATE.plusDays(30), 3, signed(Step.ISSUE, when));
    return quotes.changeStatus(issued, Quote.Status.ACCEPTED, signed(Step.ACCEPT, when));
  }

  public static Signed signed(Step step, Instant when) {
    return Signed.of(step, "ines", when, "");
  }

  public static Quote quote(String number, int revision, String title) {
    return new Quote(
        new Quote.Name(number, revision),
        Quote.Status.DRAFT,
        new Customer(
            "PHFD",
            "Port Harlow Fire District",
            "1 Quay Road",
            new Customer.Pricing("agency", BigDecimal.ZERO, Map.of()),
            new Customer.Taxation("", BigDecimal.ZERO, Optional.empty()),
            ""),
        new Quote.Validity(DATE, DATE.plusDays(30), 10, Instant.parse("2026-03-02T09:30:00Z")),
        new Basis(title, "", plan(), Optional.empty()),
        new Quote.Offer(List.of(), List.of(), Amendments.NONE),
        new Totals(
            Money.parse("USD 1234.50"),
            ZERO,
            ZERO,
            Money.parse("USD 1234.50"),
            new Totals.Charging("", false, BigDecimal.ZERO, "")));
  }

  private static LinePlan plan() {
    return GoodsPlan.of("nothing laid", List.of(), List.of(), List.of(), DATE, CurrencyUnit.USD);
  }
}
