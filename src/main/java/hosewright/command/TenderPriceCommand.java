package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.Customers;
import hosewright.quote.DealerTerms;
import hosewright.report.Export;
import hosewright.report.Paper;
import hosewright.report.TenderWorkbook;
import hosewright.report.TenderWorkbook.Counts;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Notices;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderPricing;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Prices many jobs at once. */
final class TenderPriceCommand extends ShellCommand {
  private static final int MOST_THREADS = 64;

  private final Supplier<Books> books;
  private final Notices notices;

  TenderPriceCommand(Supplier<Books> books, Notices notices) {
    super(
        CommandSpec.of(
                "tender price",
                Group.QUOTE,
                "Prices every job of a CSV file into one workbook, going on where it was stopped",
                "tender price quotes/tender-example.csv --customer COUNTER --overwrite")
            .with(
                ArgumentSpec.required(
                        "FILE", "a CSV file: a column id, and columns named as a job's options")
                    .completingFiles())
            .with(
                OptionSpec.value("customer", "ID", "whose terms price rows that name nobody")
                    .withDefaultSaid("list prices")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("date", "YYYY-MM-DD", "day of the prices where a row names none")
                    .withDefaultSaid("today"),
                OptionSpec.flag("quotes", "keep a numbered quote for every job that can be laid"),
                OptionSpec.flag("restart", "throw away what a run that was stopped has done"),
                OptionSpec.value("threads", "N", "jobs worked on at once")
                    .withDefaultSaid("one for each core"),
                SignedBy.option())
            .with(PaperOptions.options()));
    this.books = books;
    this.notices = notices;
  }

  /**
   * How a tender went.
   *
   * @param resumedAfter rows that an earlier run had done
   * @param goods subtotal of the goods of all jobs that can be laid
   */
  record Tendered(
      String file,
      String workbook,
      int jobs,
      int feasible,
      int noSafePlan,
      int notRead,
      int failed,
      int resumedAfter,
      Money goods) {}

  /** What the run needs of the books, so that they need not stay open. */
  private record Desk(
      Catalogue catalogue,
      Customers customers,
      LocalThreads register,
      DealerTerms terms,
      TenderBasis basis) {}

  /** What was asked for beside the file. */
  private record Wanted(
      String customer, Optional<LocalDate> date, int threads, Paper paper, boolean quotes) {}

  @Override
  protected Answer answer(Invocation in) {
    Wanted wanted = wanted(in);
    TenderInput input = TenderInput.read(in.argument(0).orElseThrow());
    Path folder = PaperOptions.folder(in);
    String name = input.stem() + "-priced";
    Export place = Export.to(folder, name + ".xlsx", in.flag("overwrite"));
    Desk desk = desk(wanted, input);
    Path journalFile = folder.resolve(Export.safeName(name + ".journal"));
    try (TenderJournal journal =
        TenderJournal.open(
            journalFile, desk.basis(), wanted.date().isPresent(), in.flag("restart"))) {
      int before = journal.done();
      if (before > 0) {
        notices.say(
            String.format(
                Locale.ROOT, "Going on after %,d of %,d jobs.", before, journal.basis().rows()));
      }
      TenderRun run = run(desk, journal, Signing.name(SignedBy.name(in)));
      try {
        run.work(input, wanted.threads());
      } finally {
        notices.over();
      }
      Counts counts = run.counts();
      Path written = write(place, journal, desk, wanted.paper(), run, counts);
      journal.discard();
      return said(input, written, counts, before);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Wanted wanted(Invocation in) {
    List<Problem> problems = new ArrayList<>();
    in.value("date").ifPresent(d -> problems.addAll(JobForm.problemsOf(JobField.DATE, d)));
    Optional<String> threads = in.value("threads");
    if (threads
        .filter(t -> !t.matches("[1-9][0-9]?") || Integer.parseInt(t) > MOST_THREADS)
        .isPresent()) {
      problems.add(
          Problem.of("threads", threads.get(), "a whole number from 1 to " + MOST_THREADS));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Wanted(
        in.value("customer").orElse(""),
        in.value("date").map(LocalDate::parse),
        threads.map(Integer::parseInt).orElseGet(() -> Runtime.getRuntime().availableProcessors()),
        PaperOptions.paper(in),
        in.flag("quotes"));
  }

  private Desk desk(Wanted wanted, TenderInput input) {
    try (Books open = books.get()) {
      Customers customers = open.customers();
      LocalDate date = wanted.date().orElseGet(open::today);
      if (!wanted.customer().isEmpty()) {
        customers.get(wanted.customer(), date);
      }
      TenderBasis basis =
          new TenderBasis(
              input.name(),
              input.sha256(),
              input.survey().rows(),
              open.kept().loadNumber(),
              date,
              wanted.customer(),
              wanted.quotes(),
              open.now());
      return new Desk(open.catalogue(), customers, open.localThreads(), open.terms(), basis);
    }
  }

  private TenderRun run(Desk desk, TenderJournal journal, String by) {
    TenderBasis basis = journal.basis();
    Optional<TenderQuotes> quotes =
        basis.quotes()
            ? Optional.of(
                new TenderQuotes(
                    books, basis, desk.catalogue(), desk.terms(), journal.lastQuote(), by))
            : Optional.empty();
    return new TenderRun(
        new TenderPricing(desk.catalogue(), desk.customers(), desk.register(), basis),
        journal,
        quotes,
        new TenderProgress(notices, Instant::now, basis.rows(), journal.done()));
  }

  private static Path write(
      Export place, TenderJournal journal, Desk desk, Paper paper, TenderRun run, Counts counts)
      throws IOException {
    String dealer = Papers.dealer(desk.terms()).name();
    return place.write(
        out -> TenderWorkbook.write(journal.basis(), dealer, paper, counts, run.results(), out));
  }

  private static Answer said(TenderInput input, Path written, Counts counts, int before) {
    Tendered document =
        new Tendered(
            input.name(),
            written.toString(),
            counts.jobs(),
            counts.priced(),
            counts.noSafePlan(),
            counts.badInput(),
            counts.failed(),
            before,
            counts.goods());
    String text =
        String.format(
            Locale.ROOT,
            "%,d jobs: %,d can be laid, %,d without a safe plan, %,d cannot be read.%n"
                + "Goods of all that can be laid: %,.2f %s%nWrote %s",
            counts.jobs(),
            counts.priced(),
            counts.noSafePlan(),
            counts.badInput(),
            counts.goods().getAmount(),
            counts.goods().getCurrencyUnit().getCode(),
            written);
    return counts.failed() == 0
        ? Answer.of(document, text)
        : Answer.partlyFailed(
            document,
            screen -> text + "\n" + counts.failed() + " failed through our fault: see Errors.");
  }
}
