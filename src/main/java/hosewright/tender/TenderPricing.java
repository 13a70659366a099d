package hosewright.tender;

import hosewright.catalogue.Catalogue;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.Problem;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import hosewright.quote.terms.Customers;
import hosewright.tender.TenderResult.Outcome;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/**
 * Prices the rows of a tender, each on its own; a row that cannot be read or laid is an answer too.
 *
 * <p>Threads may use it at once.
 */
public final class TenderPricing {
  private final Catalogue catalogue;
  private final Customers customers;
  private final CurrencyUnit currency;
  private final LocalThreads register;
  private final TenderBasis basis;
  private final Recent<Map<JobField, String>, Planned> plans;

  /** Planners look prices up once and keep them, each for one thread. */
  private final ThreadLocal<Map<Buyer, Planner>> planners =
      ThreadLocal.withInitial(() -> Recent.bounded(PLANNERS));

  private static final int PLANNERS = 16;

  /** Identical jobs are planned once while they stand no further apart than this. */
  private static final int FIGURES = 5_000;

  /** How far apart they may stand where whole plans must be kept for their quotes. */
  private static final int PLANS = 200;

  /**
   * What is remembered of a job.
   *
   * @param plan kept only where a quote will want it
   */
  private record Planned(
      TenderResult.Figures figures,
      boolean feasible,
      String limit,
      List<String> instead,
      Optional<LinePlan> plan) {}

  private record Buyer(Optional<String> customer, LocalDate date) {}

  /**
   * A row that was worked on.
   *
   * @param plan the plan, where there is a safe one and a quote is wanted
   * @param answers what the job says, with what the run adds
   */
  public record Priced(
      TenderResult result,
      Optional<LinePlan> plan,
      Optional<Customer> customer,
      LocalDate date,
      Map<JobField, String> answers) {}

  /**
   * @param register which thread each district uses
   * @throws BadInputException when the catalogue has no prices
   */
  public TenderPricing(
      Catalogue catalogue, Customers customers, LocalThreads register, TenderBasis basis) {
    this.catalogue = catalogue;
    this.customers = customers;
    this.register = register;
    this.basis = basis;
    this.plans = new Recent<>(basis.quoted() ? PLANS : FIGURES);
    this.currency = catalogue.currencyNeeded();
  }

  public CurrencyUnit currency() {
    return currency;
  }

  /** What comes of a row; never throws for anything in the row. */
  public Priced price(TenderRow row) {
    Map<JobField, String> answers = new TreeMap<>();
    answers.putAll(row.answers());
    if (!basis.customer().isEmpty()) {
      answers.putIfAbsent(JobField.CUSTOMER, basis.customer());
    }
    answers.putIfAbsent(JobField.DATE, basis.date().toString());
    try {
      if (!row.problems().isEmpty()) {
        throw new BadInputException(row.problems());
      }
      return price(row, answers);
    } catch (BadInputException | NoSuchThingException e) {
      return refused(row, answers, Outcome.BAD_INPUT, e.problems());
    } catch (RuntimeException | StackOverflowError e) {
      return refused(row, answers, Outcome.OUR_FAULT, List.of(ours(e)));
    }
  }

  /** What is said of a row that we failed on. */
  public static Problem ours(Throwable failure) {
    return Problem.of(
        "Hosewright",
        String.valueOf(failure),
        "it failed on this row, and it is not your input: plan it alone to learn more");
  }

  private Priced price(TenderRow row, Map<JobField, String> answers) {
    Job job = JobForm.read(answers);
    LocalDate date = job.date().orElse(basis.date());
    Optional<Customer> customer = job.customer().map(id -> customers.get(id, date));
    if (basis.quoted() && customer.isEmpty()) {
      throw customers.noneNamed();
    }
    Map<JobField, String> alike = new TreeMap<>(answers);
    alike.remove(JobField.TITLE);
    Planned planned = plans.get(alike, () -> planned(job, customer, date));
    TenderResult result =
        new TenderResult(
            new TenderResult.Place(row.line(), row.id(), job.title()),
            planned.feasible() ? Outcome.PRICED : Outcome.NO_SAFE_PLAN,
            planned.limit(),
            planned.instead(),
            List.of(),
            Optional.of(planned.figures()));
    return new Priced(result, planned.plan(), customer, date, answers);
  }

  private Planned planned(Job job, Optional<Customer> customer, LocalDate date) {
    LinePlan plan = planner(customer, date).plan(job);
    return new Planned(
        TenderResult.Figures.of(plan, terms(customer)),
        plan.feasible(),
        plan.limitedBy().orElse(""),
        plan.instead(),
        Optional.of(plan).filter(whole -> basis.quoted() && whole.feasible()));
  }

  private Priced refused(
      TenderRow row, Map<JobField, String> answers, Outcome outcome, List<Problem> problems) {
    return new Priced(
        TenderResult.refused(row, outcome, problems),
        Optional.empty(),
        Optional.empty(),
        basis.date(),
        answers);
  }

  private Planner planner(Optional<Customer> customer, LocalDate date) {
    return planners
        .get()
        .computeIfAbsent(
            new Buyer(customer.map(Customer::id), date),
            buyer ->
                new Planner(
                    catalogue,
                    CustomerTerms.of(catalogue, customer, date),
                    date,
                    currency,
                    register));
  }

  /** Whose prices, in words. */
  public static String terms(Optional<Customer> customer) {
    return customer
        .map(
            buyer -> {
              String off =
                  buyer.discount().signum() == 0
                      ? "list price"
                      : buyer.discount().movePointRight(2).stripTrailingZeros().toPlainString()
                          + " % off list";
              int contracts = buyer.pricing().contractPrices().size();
              return buyer.id()
                  + ": "
                  + off
                  + (contracts == 0 ? "" : ", " + contracts + " contract prices");
            })
        .orElse("list price");
  }
}
