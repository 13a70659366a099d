package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.line.Job;
import hosewright.line.LinePlan;
import hosewright.line.Planner;
import hosewright.problem.BadInputException;
import hosewright.quote.Customer;
import hosewright.quote.Terms;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Plans a job on the dealer's books, at the customer's prices on the day. */
final class Planning {
  private final Books books;

  Planning(Books books) {
    this.books = books;
  }

  /**
   * A plan with whom and when it was priced for.
   *
   * @param customer empty at list prices
   */
  record Planned(LinePlan plan, Optional<Customer> customer, LocalDate date) {}

  Planned plan(Job job) {
    Catalogue catalogue = books.catalogue();
    LocalDate date = job.date().orElseGet(books::today);
    Optional<Customer> customer = job.customer().map(id -> books.customers().get(id, date));
    NetPrice prices =
        customer
            .<NetPrice>map(buyer -> new Terms(catalogue, buyer, date))
            .orElseGet(() -> catalogue.listPricesOn(date));
    CurrencyUnit currency =
        catalogue
            .currency()
            .orElseThrow(
                () ->
                    new BadInputException(
                        "catalogue", "", "load one that has prices: catalogue load FOLDER"));
    return new Planned(new Planner(catalogue, prices, date, currency).plan(job), customer, date);
  }
}
