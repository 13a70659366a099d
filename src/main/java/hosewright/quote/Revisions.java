package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Makes further revisions and copies of a quote; the quote they come from is never touched. */
public final class Revisions {
  private final Catalogue catalogue;
  private final QuoteMaker maker;
  private final LocalDate today;
  private final Instant now;

  /**
   * @param today date of what is made
   * @param now stamped into it
   */
  public Revisions(Catalogue catalogue, DealerTerms dealer, LocalDate today, Instant now) {
    this.catalogue = catalogue;
    this.maker = new QuoteMaker(catalogue, dealer);
    this.today = today;
    this.now = now;
  }

  /** The prices of an earlier revision, kept; what is new is at today's price. */
  public KeptPrices kept(Quote earlier) {
    return new KeptPrices(earlier, new PriceList(catalogue, earlier.customer(), today));
  }

  /** The next revision of what is given, at the prices quoted before. */
  public Quote revised(Quote earlier, Basis basis, Amendments amendments) {
    return maker.make(next(earlier, earlier.customer(), basis, amendments), kept(earlier));
  }

  /**
   * The next revision of the same parts at today's prices.
   *
   * @param customer the buyer as it stands today
   * @throws hosewright.problem.BadInputException naming every item that has no price today
   */
  public Quote repriced(Quote earlier, Customer customer, Amendments amendments) {
    PriceList list = new PriceList(catalogue, customer, today);
    return maker.make(next(earlier, customer, today(earlier.basis(), list), amendments), list);
  }

  /** The same purchase, its plans at the prices of the day. */
  private Basis today(Basis basis, PriceList list) {
    return Basis.of(
        basis.title(),
        Optional.empty(),
        basis.groups().stream()
            .map(group -> group.with(PlanPrices.on(today, group.plan(), list)))
            .toList());
  }

  /** A new quote of the same parts at today's prices, for the same or another buyer. */
  public Quote copied(String number, Customer customer, Basis basis, Amendments amendments) {
    PriceList list = new PriceList(catalogue, customer, today);
    return maker.make(
        new QuoteMaker.Draft(
            new Quote.Name(number, 1), customer, today, today(basis, list), amendments, now),
        list);
  }

  private QuoteMaker.Draft next(
      Quote earlier, Customer customer, Basis basis, Amendments amendments) {
    return new QuoteMaker.Draft(
        new Quote.Name(earlier.number(), earlier.revision() + 1),
        customer,
        today,
        Basis.of(basis.title(), Optional.empty(), basis.groups()),
        amendments,
        now);
  }
}
