package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.order.OrderBook.Counted;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.database.Database;
import hosewright.store.quote.CustomerStore;
import hosewright.store.quote.TermsStore;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The catalogue in the dealer's books, read for a deed that needs all of it, unless it stands as it
 * was last read.
 *
 * <p>Books without a catalogue take the invented demo catalogue, so that a newcomer can quote at
 * once.
 */
public final class KeptCatalogue {
  private static final int MANY_ITEMS = 20_000;

  private final Supplier<Database> database;
  private final Consumer<String> remarks;
  private final Clock clock;
  private final LastRead lastRead;
  private Catalogue whole;

  /**
   * @param database opened when first asked for
   * @param remarks told what is worth saying beside an answer
   * @param lastRead what a deed before may have read
   */
  public KeptCatalogue(
      Supplier<Database> database, Consumer<String> remarks, Clock clock, LastRead lastRead) {
    this.database = database;
    this.remarks = remarks;
    this.clock = clock;
    this.lastRead = lastRead;
  }

  /** All of it but its costs, which a plan and a quote never need. */
  public Catalogue whole() {
    if (whole == null) {
      store();
      if (whole == null) {
        whole = database.get().steadily(books -> lastRead.of(new CatalogueStore(books)));
      }
    }
    return whole;
  }

  /** Each shelf that a load of the folder would count. */
  public List<Counted> wouldCount(CatalogueFolder folder) {
    return new CatalogueStore(database.get()).wouldCount(folder.catalogue());
  }

  /** As it is kept, which may be none yet. */
  public Catalogue standing() {
    return new CatalogueStore(database.get()).load();
  }

  /** Where it is kept, for questions that do not need all of it. */
  public CatalogueStore store() {
    CatalogueStore store = new CatalogueStore(database.get());
    if (store.isEmpty()) {
      remarks.accept(
          "The books are empty: taking the invented demo catalogue."
              + " Load your own with 'catalogue load FOLDER'.");
      takeDemo();
    }
    return store;
  }

  /** Number of the load that brought it. */
  public int loadNumber() {
    whole();
    return new CatalogueStore(database.get()).loadNumber();
  }

  /**
   * Replaces what the folder has of catalogue, customers and terms, all or nothing.
   *
   * @return each shelf that its stock column counts
   */
  public List<Counted> load(CatalogueFolder folder) {
    int items = folder.catalogue().items().size();
    if (items > MANY_ITEMS) {
      remarks.accept(String.format(Locale.ROOT, "Writing %,d items with their prices", items));
    }
    List<Counted> counted = new ArrayList<>();
    database.get().together(books -> counted.addAll(put(books, folder)));
    whole = folder.catalogue();
    return counted;
  }

  private void takeDemo() {
    database
        .get()
        .together(
            books -> {
              CatalogueStore store = new CatalogueStore(books);
              store.takeTurn();
              whole = store.load();
              // Somebody else at the same database may have been quicker, with a real one.
              if (whole.items().isEmpty()) {
                CatalogueFolder demo = CatalogueFolder.demo();
                put(books, demo);
                whole = demo.catalogue();
              }
            });
  }

  private List<Counted> put(Database books, CatalogueFolder folder) {
    List<Counted> counted =
        new CatalogueStore(books).replace(folder.catalogue(), clock.instant(), folder.source());
    CustomerStore buyers = new CustomerStore(books);
    folder.customers().ifPresent(buyers::replace);
    folder.floors().ifPresent(buyers::replaceFloors);
    folder.terms().ifPresent(new TermsStore(books)::replace);
    return counted;
  }
}
