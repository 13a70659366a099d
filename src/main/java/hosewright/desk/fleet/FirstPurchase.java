package hosewright.desk.fleet;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.desk.Books;
import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Need;
import hosewright.intake.JobText;
import hosewright.job.question.JobField;
import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.life.Signed;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Quotes what a budget buys in its first year, at today's prices. */
final class FirstPurchase {
  private static final List<String> CAUTIONS =
      List.of(
          "Check the couplings and lengths against the hose to be replaced before ordering.",
          "New hose is inspected and tested as NFPA 1962 asks before it is put in service; local"
              + " rules come first.");

  private final Books books;
  private final Customer customer;
  private final FleetBudget budget;

  FirstPurchase(Books books, Customer customer, FleetBudget budget) {
    this.books = books;
    this.customer = customer;
    this.budget = budget;
  }

  /**
   * The quote, numbered and kept.
   *
   * @param signed who makes it
   * @throws BadInputException when the first year buys nothing
   */
  Quote quote(Signed signed) {
    List<Need> needs =
        budget.purchases().needs().stream().filter(need -> need.firstYear() > 0).toList();
    if (needs.isEmpty()) {
      throw ConflictException.stateForbids(
          "budget",
          "for " + customer.id(),
          "buys no hose in its first year",
          "there is nothing to quote");
    }
    LinePlan plan = plan(needs);
    String title =
        "Hose replacement, year from "
            + budget.asked().from()
            + ", by "
            + budget.purchases().purchaseBy().orElseThrow().replace('-', ' ');
    String jobText = JobText.write(Map.of(JobField.TITLE, title, JobField.CUSTOMER, customer.id()));
    QuoteMaker maker = new QuoteMaker(books.catalogue(), books.terms());
    Amendments amendments = Amendments.NONE.withTerms(books.termsOfSale());
    PriceList prices = new PriceList(books.catalogue(), customer, books.today());
    return books
        .quotes()
        .saveNew(
            number ->
                maker.make(
                    new QuoteMaker.Draft(
                        new Quote.Name(number, 1),
                        customer,
                        books.today(),
                        new Basis(title, jobText, plan),
                        amendments,
                        books.now()),
                    prices),
            signed);
  }

  private LinePlan plan(List<Need> needs) {
    Catalogue catalogue = books.catalogue();
    LocalDate today = books.today();
    CustomerTerms terms = new CustomerTerms(catalogue, customer, today);
    CurrencyUnit currency = catalogue.currency().orElseThrow();
    List<Bill.Item> items =
        needs.stream()
            .map(need -> item(catalogue.item(need.item()).orElseThrow(), need.firstYear(), terms))
            .toList();
    return GoodsPlan.of(
        "%d sections of hose for the first year of a replacement budget."
            .formatted(needs.stream().mapToInt(Need::firstYear).sum()),
        items,
        budget.fleet().unpriced().stream()
            .map(lacking -> Unpriced.part(0, lacking.hose()))
            .toList(),
        CAUTIONS,
        today,
        currency);
  }

  private static Bill.Item item(Item item, int quantity, CustomerTerms terms) {
    Money unit = terms.unitPrice(item, quantity).orElseThrow();
    return new Bill.Item(
        item.number(),
        item.description(),
        quantity,
        0,
        item.unit().word(),
        Optional.of(unit),
        item.weightLb() * quantity);
  }
}
