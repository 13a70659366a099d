package hosewright.desk.line;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.desk.interview.Desk;
import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import hosewright.quote.terms.Customers;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Tells what must be known of the books while somebody is asked for a job. */
public final class PrepareJob {
  private final Supplier<Books> books;

  public PrepareJob(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What the books say. They are closed again: they are not kept open while somebody thinks.
   *
   * @throws hosewright.problem.BadInputException when the books cannot be had
   */
  public Desk prepare() {
    try (Books open = books.get()) {
      Catalogue items = open.catalogue();
      Customers buyers = open.customers();
      LocalThreads register = open.localThreads();
      LocalDate today = open.today();
      return new Desk(
          items,
          names(buyers),
          register.districts(),
          job -> plan(job, items, buyers, register, job.date().orElse(today)),
          open.jobInProgress());
    }
  }

  private static Map<String, String> names(Customers buyers) {
    Map<String, String> names = new LinkedHashMap<>();
    buyers.customers().forEach(one -> names.put(one.id(), one.name()));
    return names;
  }

  private static LinePlan plan(
      Job job, Catalogue items, Customers buyers, LocalThreads register, LocalDate date) {
    return Planning.planner(items, job.customer().map(id -> buyers.get(id, date)), date, register)
        .plan(job);
  }
}
