package hosewright.desk.fleet;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.fleet.budget.BudgetMaker;
import hosewright.fleet.budget.BudgetRequest;
import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetTally;
import hosewright.fleet.budget.ReplacementItems;
import hosewright.fleet.budget.SurvivalStudy;
import hosewright.fleet.record.AgencyLimits;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import hosewright.store.fleet.FleetStore;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Budgets the replacement of an agency's hose over the coming years. */
public final class BudgetFleet {
  private final Supplier<Books> books;

  public BudgetFleet(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param terms what is said of the budget, each in words
   * @param customer whose prices to use; empty for list prices
   * @param quoteFor whom the first year's purchase is quoted for, at whose prices; empty for no
   *     quote
   * @param by who makes the quote
   * @param papers where a workbook goes; empty for none
   */
  public record Request(
      Map<BudgetField, String> terms,
      Optional<String> customer,
      Optional<String> quoteFor,
      String by,
      Optional<BudgetPapers> papers) {}

  /**
   * A budget with what was made of it.
   *
   * @param workbook the file written
   */
  public record Budgeted(FleetBudget budget, Optional<Quote> quote, Optional<String> workbook) {}

  /**
   * The budget.
   *
   * @throws hosewright.problem.BadInputException when no hose is on record, or what is asked cannot
   *     be used
   */
  public Budgeted budget(Request asked) {
    try (Books open = books.get()) {
      FleetStore fleet = FleetOnRecord.in(open);
      AgencyLimits limits = fleet.limits();
      BudgetRequest request = BudgetForm.read(asked.terms(), limits, open.today());
      Optional<Customer> buyer =
          asked.quoteFor().or(asked::customer).map(id -> open.customers().get(id, open.today()));
      FleetBudget budget = make(open, fleet, limits, request, buyer);
      // No quote is kept where the workbook asked for with it has no place to go to.
      asked.papers().ifPresent(papers -> papers.place(budget));
      Optional<Quote> quote =
          asked
              .quoteFor()
              .map(
                  id ->
                      new FirstPurchase(open, buyer.orElseThrow(), budget)
                          .quote(Signing.as(asked.by(), Step.MAKE, open.now(), "")));
      return new Budgeted(
          budget,
          quote,
          asked.papers().map(p -> p.write(budget, Papers.dealer(open.terms()), open.now())));
    }
  }

  private static FleetBudget make(
      Books open,
      FleetStore fleet,
      AgencyLimits limits,
      BudgetRequest request,
      Optional<Customer> buyer) {
    FleetTally tally = new FleetTally(limits, request.from());
    fleet.each(tally::add);
    Catalogue catalogue = open.catalogue();
    NetPrice prices = CustomerTerms.of(catalogue, buyer, open.today());
    return new BudgetMaker(
            tally.ages(),
            tally.usableFt(),
            SurvivalStudy.of(tally.lives()),
            new ReplacementItems(catalogue, prices),
            prices,
            catalogue.currencyNeeded())
        .make(request);
  }
}
