package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.json.Json;
import hosewright.problem.BadInputException;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.quote.Quote;
import hosewright.quote.QuoteCodec;
import hosewright.quote.QuoteStore;
import hosewright.shell.Notices;
import hosewright.shell.Workspace;
import hosewright.store.Backup;
import hosewright.store.CatalogueStore;
import hosewright.store.CustomerStore;
import hosewright.store.Database;
import hosewright.store.StoredQuotes;
import hosewright.store.TermsStore;
import hosewright.thread.LocalThreads;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The dealer's books, opened by one command when it first needs them and closed with it, so that a
 * shell left open keeps nobody else out.
 *
 * <p>Books without a catalogue take the invented demo catalogue, so that a newcomer can quote at
 * once.
 */
final class Books implements AutoCloseable {
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
      catalogue = database().steadily(books -> new CatalogueStore(books).load());
      if (catalogue.items().isEmpty()) {
        notices.say(
            "The books are empty: taking the invented demo catalogue."
                + " Load your own with 'catalogue load FOLDER'.");
        takeDemo();
      }
    }
    return catalogue;
  }

  /** Replaces catalogue, customers and terms, all or nothing. */
  void load(CatalogueFolder folder) {
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
    new CatalogueStore(books).replace(folder.catalogue(), now());
    new CustomerStore(books).replace(folder.customers());
    new TermsStore(books).replace(folder.terms());
  }

  Customers customers() {
    catalogue();
    return new CustomerStore(database()).load();
  }

  DealerTerms terms() {
    catalogue();
    return new TermsStore(database()).load();
  }

  /** The dealer's register of local threads; without rows where none is kept. */
  LocalThreads localThreads() {
    return LocalRegister.in(workspace).read().orElseGet(LocalThreads::none);
  }

  QuoteStore quotes() {
    return new StoredQuotes(database(), new JsonCodec(), clock);
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
