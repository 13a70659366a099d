package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.WrittenJob;
import hosewright.desk.quote.MakeQuote;
import hosewright.desk.quote.MakeQuote.Made;
import hosewright.line.JobField;
import hosewright.quote.Quote;
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
    WrittenJob job = WrittenJob.of(answers.get());
    Made made =
        new MakeQuote(books)
            .make(
                new MakeQuote.Request(
                    job,
                    in.value("export").map(kinds -> PaperOptions.papers("export", kinds, in)),
                    in.value("terms"),
                    SignedBy.name(in)));
    return made.quote()
        .map(quote -> quoted(quote, made.files()))
        .orElseGet(
            () ->
                Answer.noSafePlan(
                    made.plan(),
                    screen -> PlanText.of(made.plan(), screen) + "\nNothing was quoted."));
  }

  private static Answer quoted(Quote quote, List<String> files) {
    return Answer.of(
        quote,
        screen ->
            QuoteText.of(quote, screen) + (files.isEmpty() ? "" : "\n" + PaperOptions.said(files)));
  }
}
