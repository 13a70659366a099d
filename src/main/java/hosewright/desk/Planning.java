package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

/** Plans a job on the dealer's books, at the customer's prices on the day. */
public final class Planning {
  private final Books books;

  public Planning(Books books) {
    this.books = books;
  }

  /**
   * A plan with whom and when it was priced for.
   *
   * @param customer empty at list prices
   */
  public record Planned(LinePlan plan, Optional<Customer> customer, LocalDate date) {}

  public Planned plan(Job job) {
    return planned(job, planner -> planner.plan(job));
  }

  public Planned plan(WrittenJob written) {
    return planned(written.job(), planner -> plan(planner, written));
  }

  private Planned planned(Job job, Function<Planner, LinePlan> planned) {
    LocalDate date = date(job);
    Optional<Customer> customer = customer(job, date);
    Planner planner = planner(books.catalogue(), customer, date, books.localThreads());
    return new Planned(planned.apply(planner), customer, date);
  }

  /** A plan at prices that stand already, such as those of an earlier revision. */
  public LinePlan plan(WrittenJob written, NetPrice prices) {
    Planner planner =
        new Planner(
            books.catalogue(),
            prices,
            books.today(),
            books.catalogue().currencyNeeded(),
            books.localThreads());
    return plan(planner, written);
  }

  /** What a planner plans for the line or the layout of a job. */
  public static LinePlan plan(Planner planner, WrittenJob written) {
    return written.layout().map(planner::plan).orElseGet(() -> planner.plan(written.job()));
  }

  /** A planner at the prices of the job's customer and day. */
  public Planner planner(Job job) {
    LocalDate date = date(job);
    return planner(books.catalogue(), customer(job, date), date, books.localThreads());
  }

  /**
   * A planner on books that were read before.
   *
   * @param customer whose terms price it; empty for list prices
   */
  public static Planner planner(
      Catalogue catalogue, Optional<Customer> customer, LocalDate date, LocalThreads register) {
    return new Planner(
        catalogue,
        CustomerTerms.of(catalogue, customer, date),
        date,
        catalogue.currencyNeeded(),
        register);
  }

  private LocalDate date(Job job) {
    return job.date().orElseGet(books::today);
  }

  private Optional<Customer> customer(Job job, LocalDate date) {
    return job.customer().map(id -> books.customers().get(id, date));
  }
}
