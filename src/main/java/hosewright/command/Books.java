package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.csv.CellRows;
import hosewright.json.Json;
import hosewright.quote.ContractPrice;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.quote.FreightBand;
import hosewright.quote.MarginFloors;
import hosewright.quote.Quote;
import hosewright.quote.QuoteCodec;
import hosewright.quote.QuoteStore;
import hosewright.shell.Notices;
import hosewright.shell.Workspace;
import hosewright.store.CatalogueStore;
import hosewright.store.CatalogueUses;
import hosewright.store.CustomerStore;
import hosewright.store.Database;
import hosewright.store.FleetStore;
import hosewright.store.StoredQuotes;
import hosewright.store.TermsStore;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.Money;

/**
 * The dealer's books, opened by one command when it first needs them and closed with it, so that a
 * shell left open keeps nobody else out.
 *
 * <p>Books without a catalogue take the invented demo catalogue, so that a newcomer can quote at
 * once.
 */
final class Books implements AutoCloseable {
  private static final int MANY_ITEMS = 20_000;

  private final Workspace workspace;
  private final Notices notices;
  private final Clock clock;
  private Database database;
  private Catalogue catalogue;

  Books(Workspace workspace, Notices notices, Clock clock) {
    this.workspace = workspace;
    this.notices = notices;
    this.clock = clock;
  }

  Catalogue catalogue() {
    if (catalogue == null) {
      CatalogueStore shelf = shelf();
      if (catalogue == null) {
        catalogue = shelf.load();
      }
    }
    return catalogue;
  }

  /** Where the catalogue is kept, for questions that do not need all of it. */
  CatalogueStore shelf() {
    CatalogueStore shelf = new CatalogueStore(database());
    if (shelf.isEmpty()) {
      notices.say(
          "The books are empty: taking the invented demo catalogue."
              + " Load your own with 'catalogue load FOLDER'.");
      load(CatalogueFolder.demo());
    }
    return shelf;
  }

  /** The catalogue as it is kept, which may be none yet. */
  Catalogue standing() {
    return new CatalogueStore(database()).load();
  }

  /** Replaces what the folder has of catalogue, customers and terms, all or nothing. */
  void load(CatalogueFolder folder) {
    int items = folder.catalogue().items().size();
    if (items > MANY_ITEMS) {
      notices.say(String.format(Locale.ROOT, "Writing %,d items with their prices", items));
    }
    database()
        .together(
            books -> {
              new CatalogueStore(books).replace(folder.catalogue(), now(), folder.source());
              CustomerStore buyers = new CustomerStore(books);
              folder.customers().ifPresent(buyers::replace);
              folder.floors().ifPresent(buyers::replaceFloors);
              folder.terms().ifPresent(new TermsStore(books)::replace);
            });
    catalogue = folder.catalogue();
  }

  Customers customers() {
    return buyers().load();
  }

  /** Where customers are kept. */
  CustomerStore buyers() {
    shelf();
    return new CustomerStore(database());
  }

  /** The least margin wanted of each class of customers. */
  MarginFloors marginFloors() {
    return buyers().floors();
  }

  DealerTerms terms() {
    shelf();
    return new TermsStore(database()).load();
  }

  /** Contract prices as they are kept, which may be none yet. */
  List<Money> keptContractSums() {
    return new CustomerStore(database())
        .load().contractPrices().stream().map(ContractPrice::unitPrice).toList();
  }

  /** Freight charges as they are kept, which may be none yet. */
  List<Money> keptFreightSums() {
    return new TermsStore(database()).load().freight().stream().map(FreightBand::charge).toList();
  }

  /** Where items are used. */
  CatalogueUses uses() {
    return new CatalogueUses(database(), new JsonCodec());
  }

  QuoteStore quotes() {
    return new StoredQuotes(database(), new JsonCodec(), clock);
  }

  FleetStore fleet() {
    return new FleetStore(database());
  }

  /** Takes an inventory in, all or nothing. */
  FleetIntake.Taken loadFleet(Map<String, CellRows> tables, boolean replace) {
    FleetIntake.Taken[] taken = new FleetIntake.Taken[1];
    database()
        .together(
            books -> {
              FleetStore fleet = new FleetStore(books);
              if (replace) {
                fleet.clear();
              }
              taken[0] = new FleetIntake(tables, fleet, today()).take();
            });
    return taken[0];
  }

  Instant now() {
    return clock.instant();
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  private Database database() {
    if (database == null) {
      database = Database.open(workspace.folder());
    }
    return database;
  }

  @Override
  public void close() {
    if (database != null) {
      database.close();
    }
  }

  /** Quotes are kept as the JSON that scripts read. */
  private static final class JsonCodec implements QuoteCodec {
    @Override
    public String write(Quote quote) {
      return Json.write(quote);
    }

    @Override
    public Quote read(String document) {
      return Json.readQuote(document);
    }
  }
}
