package hosewright.desk.catalogue;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueDifference;
import hosewright.desk.Books;
import hosewright.desk.CatalogueFolder;
import hosewright.desk.Refusals;
import hosewright.order.OrderBook.Counted;
import hosewright.quote.terms.ContractPrice;
import hosewright.quote.terms.FreightBand;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Takes a dealer's catalogue into the books, all or nothing. */
public final class LoadCatalogue {
  private final Supplier<Books> books;

  public LoadCatalogue(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What came of a load.
   *
   * @param written false for a dry run
   * @param difference to what stood
   * @param counted each shelf that the stock column counts, with promises there are no longer
   *     pieces for
   */
  public record Loaded(
      int items,
      int customers,
      String currency,
      boolean written,
      CatalogueDifference difference,
      List<Counted> counted) {}

  /**
   * Loads what a dealer handed over.
   *
   * @param dryRun whether only to tell what would change
   * @throws hosewright.problem.BadInputException when sums that stay in the books are in another
   *     currency; nothing has changed then
   */
  public Loaded load(CatalogueFolder folder, boolean dryRun) {
    try (Books open = books.get()) {
      Catalogue stands = open.kept().standing();
      CatalogueDifference difference =
          CatalogueDifference.between(stands, folder.catalogue(), open.today());
      oneCurrency(open, folder);
      List<Counted> counted = dryRun ? open.kept().wouldCount(folder) : open.kept().load(folder);
      return new Loaded(
          folder.catalogue().items().size(),
          folder.customers().map(given -> given.customers().size()).orElse(0),
          folder.catalogue().currency().map(Object::toString).orElse(""),
          !dryRun,
          difference,
          counted);
    }
  }

  /** Contract prices and freight that stay must be in the currency of the new prices. */
  private static void oneCurrency(Books books, CatalogueFolder folder) {
    Optional<CurrencyUnit> currency = folder.catalogue().currency();
    if (currency.isEmpty()) {
      return;
    }
    Refusals refusals = new Refusals();
    if (folder.customers().isEmpty()) {
      books.keptCustomers().load().contractPrices().stream()
          .map(ContractPrice::unitPrice)
          .filter(sum -> !sum.getCurrencyUnit().equals(currency.get()))
          .findFirst()
          .ifPresent(sum -> refuse(refusals, currency.get(), sum, "contract-prices.csv"));
    }
    if (folder.terms().isEmpty()) {
      books.keptTerms().freight().stream()
          .map(FreightBand::charge)
          .filter(sum -> !sum.getCurrencyUnit().equals(currency.get()))
          .findFirst()
          .ifPresent(sum -> refuse(refusals, currency.get(), sum, "freight.csv"));
    }
    refusals.throwAny();
  }

  private static void refuse(Refusals refusals, CurrencyUnit given, Money kept, String file) {
    refusals.add(
        "prices.csv currency",
        given.getCode(),
        "the books keep sums in %s: load a %s in %s with it"
            .formatted(kept.getCurrencyUnit(), file, given));
  }
}
