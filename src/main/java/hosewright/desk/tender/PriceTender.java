package hosewright.desk.tender;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.paper.tender.TenderWorkbook;
import hosewright.paper.tender.TenderWorkbook.Counts;
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
   * @param quotes whether a numbered quote is kept for every job that can be laid
   * @param restart whether what a run that was stopped has done is thrown away
   * @param threads jobs worked on at once
   */
  public record Run(boolean quotes, boolean restart, int threads) {}

  /**
   * How it went.
   *
   * @param file name of the tender's file
   * @param resumedAfter rows that an earlier run had done
   */
  public record Priced(String file, Path workbook, Counts counts, int resumedAfter) {}

  /** What the run needs of the books, so that they need not stay open. */
  private record Desk(
      Catalogue catalogue,
      Customers customers,
      LocalThreads register,
      DealerTerms terms,
      TenderBasis basis) {}

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
      TenderRun run = run(desk, journal, Signing.name(asked.by()), watcher);
      try {
        run.work(input, asked.run().threads());
      } finally {
        watcher.ends();
      }
      Counts counts = run.counts();
      String dealer = Papers.dealer(desk.terms()).name();
      Path written =
          place.write(
              out ->
                  TenderWorkbook.write(
                      journal.basis(), dealer, output.paper(), counts, run.results(), out));
      journal.discard();
      return new Priced(input.name(), written, counts, before);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Desk desk(Request asked, TenderInput input) {
    try (Books open = books.get()) {
      Customers customers = open.customers();
      LocalDate date = asked.date().orElseGet(open::today);
      if (!asked.customer().isEmpty()) {
        customers.get(asked.customer(), date);
      }
      TenderBasis basis =
          new TenderBasis(
              new TenderBasis.Source(input.name(), input.sha256(), input.survey().rows()),
              open.kept().loadNumber(),
              date,
              asked.customer(),
              asked.run().quotes(),
              open.now());
      return new Desk(open.catalogue(), customers, open.localThreads(), open.terms(), basis);
    }
  }

  private TenderRun run(Desk desk, TenderJournal journal, String by, Watcher watcher) {
    TenderBasis basis = journal.basis();
    Optional<TenderQuotes> quotes =
        basis.quotes()
            ? Optional.of(
                new TenderQuotes(
                    books, basis, desk.catalogue(), desk.terms(), journal.done() > 0, by))
            : Optional.empty();
    return new TenderRun(
        new TenderPricing(desk.catalogue(), desk.customers(), desk.register(), basis),
        journal,
        quotes,
        watcher);
  }
}
