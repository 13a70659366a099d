package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.csv.CellRows;
import hosewright.interview.Desk;
import hosewright.json.Json;
import hosewright.order.OrderBook;
import hosewright.problem.BadInputException;
import hosewright.quote.ContractPrice;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.quote.FreightBand;
import hosewright.quote.MarginFloors;
import hosewright.quote.Quote;
import hosewright.quote.QuoteCodec;
import hosewright.quote.QuoteStore;
import hosewright.quote.Revisions;
import hosewright.shell.Notices;
import hosewright.shell.Workspace;
import hosewright.store.Backup;
import hosewright.store.CatalogueStore;
import hosewright.store.CatalogueUses;
import hosewright.store.CustomerStore;
import hosewright.store.Database;
import hosewright.store.FleetStore;
import hosewright.store.StoredOrders;
import hosewright.store.StoredQuotes;
import hosewright.store.TermsStore;
import hosewright.thread.LocalThreads;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
  private QuoteStore quotes;

  Books(Workspace workspace, Notices notices, Clock clock) {
    this.workspace = workspace;
    this.notices = notices;
    this.clock = clock;
  }

  Catalogue catalogue() {
    if (catalogue == null) {
      shelf();
      if (catalogue == null) {
        catalogue = database().steadily(books -> new CatalogueStore(books).load());
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
      takeDemo();
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
    database().together(books -> put(books, folder));
    catalogue = folder.catalogue();
  }

  private void takeDemo() {
    database()
        .together(
            books -> {
              CatalogueStore store = new CatalogueStore(books);
              store.takeTurn();
              catalogue = store.load();
              // Somebody else at the same database may have been quicker, with a real one.
              if (catalogue.items().isEmpty()) {
                CatalogueFolder demo = CatalogueFolder.demo();
                put(books, demo);
                catalogue = demo.catalogue();
              }
            });
  }

  private void put(Database books, CatalogueFolder folder) {
    new CatalogueStore(books).replace(folder.catalogue(), now(), folder.source());
    CustomerStore buyers = new CustomerStore(books);
    folder.customers().ifPresent(buyers::replace);
    folder.floors().ifPresent(buyers::replaceFloors);
    folder.terms().ifPresent(new TermsStore(books)::replace);
  }

  /** Number of the load that brought the catalogue. */
  int catalogueLoad() {
    catalogue();
    return new CatalogueStore(database()).loadNumber();
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

  /** The dealer's register of local threads; without rows where none is kept. */
  LocalThreads localThreads() {
    return LocalRegister.in(workspace).read().orElseGet(LocalThreads::none);
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

  /** The quotes; those past their last day are expired first. */
  QuoteStore quotes() {
    if (quotes == null) {
      quotes = new StoredQuotes(database(), new JsonCodec(), clock);
      quotes.expireBefore(today());
    }
    return quotes;
  }

  /** The orders, with the stock they reserve. */
  OrderBook orders() {
    return new StoredOrders(database());
  }

  /** Makes revisions and copies dated now. */
  Revisions revisions() {
    return new Revisions(catalogue(), terms(), today(), now());
  }

  /** The dealer's terms of sale, one sentence each; none until somebody writes the file. */
  List<String> termsOfSale() {
    Path file = termsFile();
    return Files.exists(file) ? TextLines.read("terms", file) : List.of();
  }

  /** The plain text file that terms of sale are read from. */
  Path termsFile() {
    return workspace.where().resolve(Backup.TERMS_OF_SALE);
  }

  ZoneId zone() {
    return clock.getZone();
  }

  /** What an interview needs of the books, so that they need not stay open while it lasts. */
  Desk desk() {
    Catalogue items = catalogue();
    Customers buyers = customers();
    LocalThreads register = localThreads();
    LocalDate today = today();
    return new Desk(
        items,
        buyers.customers().stream().map(Customer::id).toList(),
        register.districts(),
        job -> {
          LocalDate date = job.date().orElse(today);
          return Planning.planner(
                  items, job.customer().map(id -> buyers.get(id, date)), date, register)
              .plan(job);
        },
        workspace.folder().resolve("job-in-progress.yaml"));
  }

  /**
   * Copies the books into a file.
   *
   * @param file where to; empty for a place in the data folder
   */
  Path backUp(Optional<Path> file) {
    return new Backup(workspace.folder(), now()).make(database(), file);
  }

  /**
   * Puts a backup back, before anything of these books was asked for.
   *
   * @return where the books that stood there before were put
   */
  Optional<Path> restore(Path backup) {
    if (workspace.database().isPresent()) {
      throw new BadInputException(
          workspace.databaseField(),
          "",
          "left out: only books in a data folder are put back so, a server's with pg_restore");
    }
    return new Backup(workspace.folder(), now()).restore(backup);
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
      database =
          TeamDatabase.in(workspace)
              .map(server -> Database.open(server, workspace.folder()))
              .orElseGet(() -> Database.open(workspace.folder()));
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
