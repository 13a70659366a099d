package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.order.OrderBook;
import hosewright.problem.BadInputException;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.quote.MarginFloors;
import hosewright.quote.Quote;
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
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The dealer's books, opened by one command when it first needs them and closed with it, so that a
 * shell left open keeps nobody else out.
 */
final class Books implements AutoCloseable {
  private final Workspace workspace;
  private final Clock clock;
  private final KeptCatalogue kept;
  private Database database;
  private QuoteStore quotes;

  Books(Workspace workspace, Notices notices, Clock clock) {
    this.workspace = workspace;
    this.clock = clock;
    this.kept = new KeptCatalogue(this::database, notices, clock);
  }

  /** The catalogue, whole but for costs: {@link #itemsOf} and {@link #shelf} have those. */
  Catalogue catalogue() {
    return kept.whole();
  }

  /** The part of the catalogue that a quote's lines are about, with costs. */
  Catalogue itemsOf(Quote quote) {
    return shelf()
        .load(
            quote.lines().stream()
                .map(Quote.QuoteLine::item)
                .filter(item -> !item.isEmpty())
                .distinct()
                .toList());
  }

  /** Where the catalogue is kept, for questions that do not need all of it. */
  CatalogueStore shelf() {
    return kept.store();
  }

  /** The catalogue as a load finds it and leaves it. */
  KeptCatalogue kept() {
    return kept;
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

  /** What customers were promised, which may be nothing yet. */
  CustomerStore keptCustomers() {
    return new CustomerStore(database());
  }

  /** What the dealer asks for freight and the like, which may be nothing yet. */
  DealerTerms keptTerms() {
    return new TermsStore(database()).load();
  }

  /** Where items are used. */
  CatalogueUses uses() {
    return new CatalogueUses(database(), new QuoteDocuments());
  }

  /** The quotes; those past their last day are expired first. */
  QuoteStore quotes() {
    if (quotes == null) {
      quotes = new StoredQuotes(database(), new QuoteDocuments(), clock);
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
    return TermsOfSale.in(workspace);
  }

  /** Where an interview keeps its answers while it lasts. */
  Path jobInProgress() {
    return workspace.folder().resolve("job-in-progress.yaml");
  }

  ZoneId zone() {
    return clock.getZone();
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

  /**
   * Changes an agency's hose on record, all or nothing.
   *
   * @param work must not keep what it is given
   */
  void changeFleet(Consumer<FleetStore> work) {
    database().together(books -> work.accept(new FleetStore(books)));
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
}
