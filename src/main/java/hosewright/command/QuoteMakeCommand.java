package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Planning;
import hosewright.desk.Signing;
import hosewright.desk.TextLines;
import hosewright.jobfile.JobFile;
import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.quote.Amendments;
import hosewright.quote.Customer;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.QuoteMaker;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Plans a job for a customer and keeps the priced plan as a numbered quote. */
final class QuoteMakeCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteMakeCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote make",
                Group.QUOTE,
                "Plans a job for a customer and keeps it as a numbered quote",
                "quote make --job quotes/hydrant-to-nozzle.yaml --customer COUNTER")
            .alias("make")
            .with(JobAnswers.options(books))
            .with(
                OptionSpec.value("export", "KINDS", "write papers at once, such as workbook,pdf")
                    .completingList(() -> Papers.KINDS))
            .with(PaperOptions.options())
            .with(AmendmentOptions.terms(), SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    Optional<Map<JobField, String>> answers = JobAnswers.gather(in, books, true);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was quoted.");
    }
    Job job = JobForm.read(answers.get());
    Optional<Papers> papers =
        in.value("export").map(kinds -> PaperOptions.papers("export", kinds, in));
    try (Books open = books.get()) {
      if (job.customer().isEmpty()) {
        throw open.customers().noneNamed();
      }
      Planning.Planned planned = new Planning(open).plan(job);
      LinePlan plan = planned.plan();
      if (!plan.feasible()) {
        return Answer.noSafePlan(
            plan, screen -> PlanText.of(plan, screen) + "\nNothing was quoted.");
      }
      String jobText = JobFile.write(answers.get());
      Quote quote = keep(in, open, job.title(), jobText, planned, papers);
      List<String> files =
          papers.map(p -> p.write(quote, Papers.dealer(open.terms()))).orElse(List.of());
      return Answer.of(
          quote,
          screen ->
              QuoteText.of(quote, screen)
                  + (files.isEmpty() ? "" : "\n" + PaperOptions.said(files)));
    }
  }

  /** Nothing is kept where the papers asked for have no place to go to. */
  private static Quote keep(
      Invocation in,
      Books open,
      String title,
      String jobText,
      Planning.Planned planned,
      Optional<Papers> papers) {
    Customer customer = planned.customer().orElseThrow();
    QuoteMaker maker = new QuoteMaker(open.catalogue(), open.terms());
    Amendments amendments =
        Amendments.NONE.withTerms(
            in.value("terms")
                .map(file -> TextLines.read("terms", file))
                .orElseGet(open::termsOfSale));
    PriceList prices = new PriceList(open.catalogue(), customer, planned.date());
    return open.quotes()
        .saveNew(
            number -> {
              papers.ifPresent(all -> all.places(number, 1));
              return maker.make(
                  new QuoteMaker.Draft(
                      number,
                      1,
                      customer,
                      planned.date(),
                      title,
                      jobText,
                      planned.plan(),
                      amendments,
                      open.now()),
                  prices);
            },
            Signing.as(SignedBy.name(in), Step.MAKE, open.now(), ""));
  }
}
