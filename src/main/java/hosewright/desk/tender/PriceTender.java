package hosewright.desk.tender;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.desk.purchase.Dealer;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.paper.tender.TenderWorkbook;
import hosewright.paper.tender.TenderWorkbook.Counts;
import hosewright.quote.Quote;
import hosewright.quote.terms.Customers;
import hosewright.quote.terms.DealerTerms;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderPricing;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;

/** Prices every job of a file into one workbook, going on where it was stopped. */
public final class PriceTender {
  private final Supplier<Books> books;

  public PriceTender(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param file name of a CSV file of jobs
   * @param customer whose terms price rows that name nobody; empty for list prices
   * @param date day of the prices where a row names none; today without it
   * @param output where the workbook goes
   * @param by who makes the quotes
   */
  public record Request(
      String file, String customer, Optional<LocalDate> date, Output output, Run run, String by) {}

  /**
   * Where the workbook goes.
   *
   * @param overwrite whether one that is there already may be replaced
   */
  public record Output(Paper paper, Path folder, boolean overwrite) {}

  /**
   * How the jobs are worked on.
   *
   * @param quotes which numbered quotes are kept of the jobs that can be laid
   * @param restart whether what a run that was stopped has done is thrown away
   * @param threads jobs worked on at once
   */
  public record Run(Kept quotes, boolean restart, int threads) {}

  /** The quotes that are kept of a tender. */
  public enum Kept {
    NONE,
    /** One for each row that can be laid. */
    EACH,
    /** One for all of them together. */
    ONE
  }

  /**
   * How it went.
   *
   * @param file name of the tender's file
   * @param resumedAfter rows that an earlier run had done
   * @param quote the one quote for all rows, where one was asked for and any can be laid
   */
  public record Priced(
      String file, Path workbook, Counts counts, int resumedAfter, Optional<Quote> quote) {}

  /** What the run needs of the books, so that they need not stay open. */
  private record Desk(
      Catalogue catalogue,
      Customers customers,
      LocalThreads register,
      DealerTerms terms,
      TenderBasis basis,
      Optional<Dealer> forPackages) {}

  /**
   * The workbook, once every job is worked on.
   *
   * @throws hosewright.problem.BadInputException when the file cannot be read, the workbook has no
   *     place to go to, or a run that was stopped rests on something else
   */
  public Priced price(Request asked, Watcher watcher) {
    TenderInput input = TenderInput.read(asked.file());
    Output output = asked.output();
    String name = input.stem() + "-priced";
    Export place = Export.to(output.folder(), name + ".xlsx", output.overwrite());
    Desk desk = desk(asked, input);
    Path journalFile = output.folder().resolve(Export.safeName(name + ".journal"));
    try (TenderJournal journal =
        TenderJournal.open(
            journalFile, desk.basis(), asked.date().isPresent(), asked.run().restart())) {
      int before = journal.done();
      watcher.begins(before, journal.basis().source().rows());
      TenderRun run = run(desk, input, journal, Signing.name(asked.by()), watcher);
      try {
        run.work(input, asked.run().threads());
      } finally {
        watcher.ends();
      }
      Optional<TogetherQuote> one = run.together();
      Counts counts = run.counts();
      String dealer = Papers.dealer(desk.terms()).name();
      Path written =
          place.write(
              out ->
                  TenderWorkbook.write(
                      journal.basis(), dealer, output.paper(), counts, run.results(one), out));
      journal.discard();
      return new Priced(input.name(), written, counts, before, one.flatMap(TogetherQuote::quote));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Desk desk(Request asked, TenderInput input) {
    try (Books open = books.get()) {
      Customers customers = open.customers();
      LocalDate date = asked.date().orElseGet(open::today);
      Kept kept = asked.run().quotes();
      if (kept == Kept.ONE) {
        TogetherQuote.check(asked.customer(), input.survey().rows(), customers);
      }
      if (!asked.customer().isEmpty()) {
        customers.get(asked.customer(), date);
      }
      TenderBasis basis =
          new TenderBasis(
              new TenderBasis.Source(input.name(), input.sha256(), input.survey().rows()),
              open.kept().loadNumber(),
              date,
              asked.customer(),
              kept == Kept.EACH,
              kept == Kept.ONE,
              open.now());
      Optional<Dealer> forPackages =
          input.hasPackages() ? Optional.of(Dealer.kept(open)) : Optional.empty();
      return new Desk(
          open.catalogue(), customers, open.localThreads(), open.terms(), basis, forPackages);
    }
  }

  private TenderRun run(
      Desk desk, TenderInput input, TenderJournal journal, String by, Watcher watcher) {
    TenderBasis basis = journal.basis();
    Optional<TenderQuotes> quotes =
        basis.quoted()
            ? Optional.of(
                new TenderQuotes(
                    books, basis, desk.catalogue(), desk.terms(), journal.done() > 0, by))
            : Optional.empty();
    Optional<PackageRows> packages =
        desk.forPackages()
            .map(dealer -> new PackageRows(dealer, desk.terms(), basis, input.folder()));
    TenderPricing pricing =
        new TenderPricing(desk.catalogue(), desk.customers(), desk.register(), basis);
    return new TenderRun(
        new RowPricing(pricing, packages, basis, input.folder()), journal, quotes, watcher);
  }
}
