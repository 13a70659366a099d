package hosewright.door.shell.tender;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.tender.PriceTender;
import hosewright.desk.tender.PriceTender.Priced;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.run.Notices;
import hosewright.door.shell.screen.Answer;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.paper.tender.TenderWorkbook.Counts;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Prices many jobs at once. */
public final class TenderPriceCommand extends ShellCommand {
  private static final int MOST_THREADS = 64;

  private final PriceTender priceTender;
  private final Notices notices;

  public TenderPriceCommand(Supplier<Books> books, Notices notices) {
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
                OptionSpec.flag(
                    "one-quote", "keep one quote for all jobs that can be laid, priced together"),
                OptionSpec.flag("restart", "throw away what a run that was stopped has done"),
                OptionSpec.value("threads", "N", "jobs worked on at once")
                    .withDefaultSaid("one for each core"),
                SignedBy.option())
            .with(PaperOptions.options()));
    this.priceTender = new PriceTender(books);
    this.notices = notices;
  }

  /**
   * How a tender went.
   *
   * @param goods subtotal of the goods of all jobs that can be laid
   * @param quote number of the one quote for all of them
   */
  record Tendered(
      String file,
      String workbook,
      @JsonUnwrapped Counts counts,
      Money goods,
      Optional<String> quote) {

    /**
     * How many rows there are, and how they went.
     *
     * @param resumedAfter rows that an earlier run had done
     */
    record Counts(
        int jobs, int feasible, int noSafePlan, int notRead, int failed, int resumedAfter) {}
  }

  @Override
  protected Answer answer(Invocation in) {
    check(in);
    PriceTender.Request asked =
        new PriceTender.Request(
            in.argument(0).orElseThrow(),
            in.value("customer").orElse(""),
            in.value("date").map(LocalDate::parse),
            new PriceTender.Output(
                PaperOptions.paper(in), PaperOptions.folder(in), in.flag("overwrite")),
            new PriceTender.Run(kept(in), in.flag("restart"), threads(in)),
            SignedBy.name(in));
    return said(priceTender.price(asked, new TenderProgress(notices, Instant::now)));
  }

  private static String sentence(Quote quote) {
    return "%nQuote %s holds all of them: %s, %s in all."
        .formatted(
            quote.number(),
            quote.groups().size() == 1 ? "1 group" : quote.groups().size() + " groups",
            MoneyWords.of(quote.total()));
  }

  /** Everything wrong with what was typed is said at once. */
  private static void check(Invocation in) {
    List<Problem> problems = new ArrayList<>();
    in.value("date").ifPresent(d -> problems.addAll(JobForm.problemsOf(JobField.DATE, d)));
    in.value("threads")
        .filter(t -> !t.matches("[1-9][0-9]?") || Integer.parseInt(t) > MOST_THREADS)
        .ifPresent(
            t ->
                problems.add(Problem.of("threads", t, "a whole number from 1 to " + MOST_THREADS)));
    if (in.flag("quotes") && in.flag("one-quote")) {
      problems.add(Problem.of("one-quote", "yes", "either one quote for all, or --quotes"));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private static PriceTender.Kept kept(Invocation in) {
    if (in.flag("one-quote")) {
      return PriceTender.Kept.ONE;
    }
    return in.flag("quotes") ? PriceTender.Kept.EACH : PriceTender.Kept.NONE;
  }

  private static int threads(Invocation in) {
    return in.value("threads")
        .map(Integer::parseInt)
        .orElseGet(() -> Runtime.getRuntime().availableProcessors());
  }

  private static Answer said(Priced priced) {
    Counts counts = priced.counts();
    Tendered document =
        new Tendered(
            priced.file(),
            priced.workbook().toString(),
            new Tendered.Counts(
                counts.jobs(),
                counts.priced(),
                counts.noSafePlan(),
                counts.badInput(),
                counts.failed(),
                priced.resumedAfter()),
            counts.goods(),
            priced.quote().map(Quote::number));
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
                priced.workbook())
            + priced.quote().map(TenderPriceCommand::sentence).orElse("");
    return counts.failed() == 0
        ? Answer.of(document, text)
        : Answer.partlyFailed(
            document,
            screen -> text + "\n" + counts.failed() + " failed through our fault: see Errors.");
  }
}
