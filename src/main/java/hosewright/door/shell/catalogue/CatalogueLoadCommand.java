package hosewright.door.shell.catalogue;

import hosewright.catalogue.CatalogueDifference;
import hosewright.catalogue.CatalogueDifference.FactChange;
import hosewright.catalogue.CatalogueDifference.PriceChange;
import hosewright.catalogue.Item;
import hosewright.desk.Books;
import hosewright.desk.CatalogueFolder;
import hosewright.desk.NamedPath;
import hosewright.desk.catalogue.LoadCatalogue;
import hosewright.desk.catalogue.LoadCatalogue.Loaded;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.BadRows;
import hosewright.door.shell.run.Notices;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.order.OrderBook.Counted;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Takes a dealer's catalogue files into the books. */
public final class CatalogueLoadCommand extends ShellCommand {
  private final LoadCatalogue load;
  private final Notices notices;

  public CatalogueLoadCommand(Supplier<Books> books, Notices notices) {
    super(
        CommandSpec.of(
                "catalogue load",
                Group.BUY,
                "Takes a folder of catalogue files, or a workbook, into the books, all or nothing",
                "catalogue load catalogue --dry-run")
            .with(place())
            .with(mapping(), OptionSpec.flag("dry-run", "show what would change; write nothing"))
            .with(BadRows.options()));
    load = new LoadCatalogue(books);
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

  /** The place somebody named. */
  static Path folder(Invocation in) {
    return NamedPath.of("folder", in.argument(0).orElseThrow(), "the name of a folder");
  }

  /** The mapping file somebody named. */
  static Optional<Path> mapping(Invocation in) {
    return in.value("mapping").map(map -> NamedPath.of("mapping", map, "the name of a file"));
  }

  /**
   * What came of a load.
   *
   * @param written false for a dry run
   * @param counted each shelf that the stock column counts
   */
  record Document(
      int items,
      int customers,
      String currency,
      boolean written,
      Changed changed,
      List<Counted> counted) {

    static Document of(Loaded loaded) {
      return new Document(
          loaded.items(),
          loaded.customers(),
          loaded.currency(),
          loaded.written(),
          Changed.of(loaded.difference()),
          loaded.counted());
    }
  }

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
    CatalogueFolder folder =
        BadRows.reported(in, () -> CatalogueFolder.read(folder(in), mapping(in), notices::say));
    Loaded loaded = load.load(folder, in.flag("dry-run"));
    return Answer.of(Document.of(loaded), screen -> text(loaded, in.flag("all"), screen));
  }

  private static String text(Loaded loaded, boolean all, Screen screen) {
    CountsText counts = new CountsText(loaded.counted(), all);
    String told =
        loaded.difference().isEmpty() && !loaded.counted().isEmpty()
            ? "Nothing but stock differs from what stands."
            : loaded.written()
                ? DifferenceText.summary(loaded.difference())
                : new DifferenceText(loaded.difference(), all).on(screen);
    String did =
        loaded.written()
            ? "Loaded %d items and %d customers, priced in %s."
                .formatted(loaded.items(), loaded.customers(), loaded.currency())
            : "Nothing was written. This load would change:";
    return String.join("\n", did, told) + counts.on(screen, loaded.written());
  }
}
