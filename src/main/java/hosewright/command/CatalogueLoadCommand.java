package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CatalogueDifference;
import hosewright.catalogue.CatalogueDifference.FactChange;
import hosewright.catalogue.CatalogueDifference.PriceChange;
import hosewright.catalogue.Item;
import hosewright.desk.Books;
import hosewright.desk.CatalogueFolder;
import hosewright.desk.NamedPath;
import hosewright.desk.Refusals;
import hosewright.quote.ContractPrice;
import hosewright.quote.FreightBand;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Notices;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Takes a dealer's catalogue files into the books. */
final class CatalogueLoadCommand extends ShellCommand {
  private final Supplier<Books> books;
  private final Notices notices;

  CatalogueLoadCommand(Supplier<Books> books, Notices notices) {
    super(
        CommandSpec.of(
                "catalogue load",
                Group.BUY,
                "Takes a folder of catalogue files, or a workbook, into the books, all or nothing",
                "catalogue load catalogue --dry-run")
            .with(place())
            .with(mapping(), OptionSpec.flag("dry-run", "show what would change; write nothing"))
            .with(BadRows.options()));
    this.books = books;
    this.notices = notices;
  }

  static ArgumentSpec place() {
    return ArgumentSpec.required(
            "PLACE",
            "the folder with items.csv, prices.csv, suppliers.csv and costs.csv (or .xlsx), or one"
                + " workbook with sheets of these names")
        .completingFiles();
  }

  static OptionSpec mapping() {
    return OptionSpec.value("mapping", "FILE", "a file that maps your own columns to ours")
        .completingFiles();
  }

  static CatalogueFolder read(Invocation in, Notices notices) {
    return BadRows.reported(
        in,
        () ->
            CatalogueFolder.read(
                NamedPath.of("folder", in.argument(0).orElseThrow(), "the name of a folder"),
                in.value("mapping").map(map -> NamedPath.of("mapping", map, "the name of a file")),
                notices::say));
  }

  /**
   * What came of a load.
   *
   * @param written false for a dry run
   */
  record Loaded(int items, int customers, String currency, boolean written, Changed changed) {}

  /** The difference to what stood. */
  record Changed(
      List<String> added,
      List<String> dropped,
      List<String> discontinued,
      List<PriceChange> prices,
      List<FactChange> facts) {

    static Changed of(CatalogueDifference difference) {
      return new Changed(
          difference.added().stream().map(Item::number).toList(),
          difference.dropped().stream().map(Item::number).toList(),
          difference.discontinued().stream().map(Item::number).toList(),
          difference.prices(),
          difference.facts());
    }
  }

  @Override
  protected Answer answer(Invocation in) {
    CatalogueFolder folder = read(in, notices);
    boolean dry = in.flag("dry-run");
    try (Books open = books.get()) {
      Catalogue stands = open.kept().standing();
      CatalogueDifference difference =
          CatalogueDifference.between(stands, folder.catalogue(), open.today());
      oneCurrency(open, folder);
      if (!dry) {
        open.kept().load(folder);
      }
      Loaded loaded =
          new Loaded(
              folder.catalogue().items().size(),
              folder.customers().map(given -> given.customers().size()).orElse(0),
              folder.catalogue().currency().map(Object::toString).orElse(""),
              !dry,
              Changed.of(difference));
      return Answer.of(
          loaded,
          screen ->
              dry
                  ? "Nothing was written. This load would change:\n"
                      + new DifferenceText(difference, in.flag("all")).on(screen)
                  : "Loaded %d items and %d customers, priced in %s.\n%s"
                      .formatted(
                          loaded.items(),
                          loaded.customers(),
                          loaded.currency(),
                          DifferenceText.summary(difference)));
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
