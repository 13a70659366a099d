package hosewright.desk;

import hosewright.catalogue.Catalogue;
import hosewright.order.OrderBook;
import hosewright.quote.Quote;
import hosewright.quote.Revisions;
import hosewright.quote.life.QuoteStore;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.MarginFloors;
import hosewright.store.backup.Backup;
import hosewright.store.catalogue.CatalogueStore;
import hosewright.store.catalogue.CatalogueUses;
import hosewright.store.database.Database;
import hosewright.store.database.HighWaterMarks;
import hosewright.store.database.Series;
import hosewright.store.fleet.FleetStore;
import hosewright.store.folder.Replacement;
import hosewright.store.order.StoredOrders;
import hosewright.store.quote.CustomerStore;
import hosewright.store.quote.RateStore;
import hosewright.store.quote.StoredQuotes;
import hosewright.store.quote.TermsStore;
import hosewright.thread.LocalThreads;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The dealer's books, opened for one deed when it first needs them and closed with it, so that a
 * shell left open keeps nobody else out.
 */
public final class Books implements AutoCloseable {
  /** By so much may the clocks of a team differ. */
  private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(10);

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final BooksPlace place;
  private final Consumer<String> remarks;
  private final Clock clock;
  private final KeptCatalogue kept;
  private Database database;
  private QuoteStore quotes;

  /**
   * @param remarks told what is worth saying beside an answer
   */
  public Books(BooksPlace place, Consumer<String> remarks, Clock clock) {
    this(place, remarks, clock, new LastRead());
  }

  /**
   * @param remarks told what is worth saying beside an answer
   * @param lastRead shared with the deeds before and after
   */
  public Books(BooksPlace place, Consumer<String> remarks, Clock clock, LastRead lastRead) {
    this.place = place;
    this.remarks = remarks;
    this.clock = clock;
    this.kept = new KeptCatalogue(this::database, remarks, clock, lastRead);
  }

  /** Says something beside the answer. */
  public void say(String remark) {
    remarks.accept(remark);
  }

  /** The catalogue, whole but for costs: {@link #itemsOf} and {@link #shelf} have those. */
  public Catalogue catalogue() {
    return kept.whole();
  }

  /** The part of the catalogue that a quote's lines are about, with costs. */
  public Catalogue itemsOf(Quote quote) {
    return shelf()
        .load(
            quote.lines().stream()
                .map(line -> line.goods().item())
                .filter(item -> !item.isEmpty())
                .distinct()
                .toList());
  }

  /** Where the catalogue is kept, for questions that do not need all of it. */
  public CatalogueStore shelf() {
    return kept.store();
  }

  /** The catalogue as a load finds it and leaves it. */
  public KeptCatalogue kept() {
    return kept;
  }

  public Customers customers() {
    return buyers().load();
  }

  /** Where customers are kept. */
  public CustomerStore buyers() {
    shelf();
    return new CustomerStore(database());
  }

  /** The least margin wanted of each class of customers. */
  public MarginFloors marginFloors() {
    return buyers().floors();
  }

  public DealerTerms terms() {
    shelf();
    return new TermsStore(database()).load();
  }

  /** The dealer's register of local threads; without rows where none is kept. */
  public LocalThreads localThreads() {
    return LocalRegister.in(place.where()).read().orElseGet(LocalThreads::none);
  }

  /** What customers were promised, which may be nothing yet. */
  public CustomerStore keptCustomers() {
    return new CustomerStore(database());
  }

  /** What the dealer asks for freight and the like, which may be nothing yet. */
  public DealerTerms keptTerms() {
    return new TermsStore(database()).load();
  }

  /** Where items are used. */
  public CatalogueUses uses() {
    return new CatalogueUses(database(), new QuoteDocuments());
  }

  /** The quotes; those past their last day are expired first. */
  public QuoteStore quotes() {
    if (quotes == null) {
      quotes = new StoredQuotes(database(), new QuoteDocuments(), clock);
      quotes.expireBefore(today());
      quotes
          .lastMade()
          .filter(made -> made.minus(CLOCKS_DIFFER).isAfter(now()))
          .ifPresent(this::tellClock);
    }
    return quotes;
  }

  /**
   * Days that quotes hold are counted from the clock, so one set back is told and not obeyed in
   * silence.
   */
  private void tellClock(Instant lastMade) {
    remarks.accept(
        "This machine's clock says %s, and the last quote was made on %s: set the clock right first if it is behind."
            .formatted(minute(now()), minute(lastMade)));
  }

  private String minute(Instant at) {
    return MINUTE.format(at.atZone(zone()));
  }

  /** The orders, with the stock they reserve. */
  public OrderBook orders() {
    return new StoredOrders(database());
  }

  /** Makes revisions and copies dated now. */
  public Revisions revisions() {
    return new Revisions(catalogue(), terms(), today(), now());
  }

  /** What other currencies are worth. */
  public RateStore rates() {
    return new RateStore(database());
  }

  /** The dealer's terms of sale, one sentence each; none until somebody writes the file. */
  public List<String> termsOfSale() {
    return TermsOfSale.in(place.where());
  }

  /** The dealer's kits; none until somebody keeps one. */
  public Kits kits() {
    if (database == null && Files.isDirectory(place.where())) {
      // Those of a backup that a killed program was putting back are taken first, as when books
      // are opened.
      Replacement.clear(place.where());
    }
    return Kits.in(place.where());
  }

  /** Where an interview keeps its answers while it lasts. */
  public Path jobInProgress() {
    return place.folder().resolve("job-in-progress.yaml");
  }

  public ZoneId zone() {
    return clock.getZone();
  }

  /**
   * Copies the books into a file.
   *
   * @param file where to; empty for a place in the data folder
   */
  public Path backUp(Optional<Path> file) {
    return backup().make(database(), file);
  }

  /**
   * Puts a backup back, before anything of these books was asked for.
   *
   * @return where the books that stood there before were put
   */
  public Optional<Path> restore(Path backup) {
    return place.server().isPresent()
        ? backup().restore(backup, database())
        : backup().restore(backup);
  }

  /** Sets the highest number ever given to papers right, which is kept outside the books. */
  public HighWaterMarks.Corrected setMark(Series series, int number, String by, String reason) {
    return database()
        .marks()
        .setRight(database().context(), series, number, new HighWaterMarks.Step(now(), by, reason));
  }

  private Backup backup() {
    return new Backup(place.folder(), ProgramVersion.written(), now());
  }

  public FleetStore fleet() {
    return new FleetStore(database());
  }

  /**
   * Changes customers while nobody else does, all or nothing.
   *
   * @param work must not keep what it is given
   */
  public void changeCustomers(Consumer<CustomerStore> work) {
    // A demo taken meanwhile would wait for the turn taken here.
    shelf();
    database()
        .together(
            books -> {
              CustomerStore buyers = new CustomerStore(books);
              buyers.takeTurn();
              work.accept(buyers);
            });
  }

  /**
   * Changes an agency's hose on record while nobody else does, all or nothing.
   *
   * @param work must not keep what it is given
   */
  public void changeFleet(Consumer<FleetStore> work) {
    database()
        .together(
            books -> {
              FleetStore fleet = new FleetStore(books);
              fleet.takeTurn();
              work.accept(fleet);
            });
  }

  public Instant now() {
    return clock.instant();
  }

  public LocalDate today() {
    return LocalDate.now(clock);
  }

  private Database database() {
    if (database == null) {
      database =
          place
              .server()
              .map(server -> Database.open(server, place.folder()))
              .orElseGet(() -> Database.open(place.folder()));
      FolderRights.tellOnce(place.folder(), remarks);
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
