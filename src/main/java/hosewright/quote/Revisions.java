package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.line.model.LinePlan;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import java.time.Instant;
import java.time.LocalDate;

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

  /** The next revision with the job, plan and amendments given, at the prices quoted before. */
  public Quote revised(
      Quote earlier, String title, String jobText, LinePlan plan, Amendments amendments) {
    return maker.make(
        next(earlier, earlier.customer(), title, jobText, plan, amendments), kept(earlier));
  }

  /**
   * The next revision of the same parts at today's prices.
   *
   * @param customer the buyer as it stands today
   * @throws hosewright.problem.BadInputException naming every item that has no price today
   */
  public Quote repriced(Quote earlier, Customer customer, Amendments amendments) {
    PriceList list = new PriceList(catalogue, customer, today);
    LinePlan plan = PlanPrices.on(today, earlier.plan(), list);
    return maker.make(
        next(
            earlier,
            customer,
            earlier.basis().title(),
            earlier.basis().jobYaml(),
            plan,
            amendments),
        list);
  }

  /** A new quote of the same parts at today's prices, for the same or another buyer. */
  public Quote copied(
      Quote earlier,
      String number,
      Customer customer,
      String title,
      String jobText,
      Amendments amendments) {
    PriceList list = new PriceList(catalogue, customer, today);
    LinePlan plan = PlanPrices.on(today, earlier.plan(), list);
    return maker.make(
        new QuoteMaker.Draft(
            new Quote.Name(number, 1),
            customer,
            today,
            new Quote.Basis(title, jobText, plan),
            amendments,
            now),
        list);
  }

  private QuoteMaker.Draft next(
      Quote earlier,
      Customer customer,
      String title,
      String jobText,
      LinePlan plan,
      Amendments amendments) {
    return new QuoteMaker.Draft(
        new Quote.Name(earlier.number(), earlier.revision() + 1),
        customer,
        today,
        new Quote.Basis(title, jobText, plan),
        amendments,
        now);
  }
}
