package hosewright.door.shell.quote;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.WrittenJob;
import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.MakePurchase;
import hosewright.desk.quote.MakeQuote;
import hosewright.desk.quote.MakeQuote.Made;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.line.JobAnswers;
import hosewright.door.shell.line.PlanText;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Plans a job for a customer and keeps the priced plan as a numbered quote. */
public final class QuoteMakeCommand extends ShellCommand {
  private static final String COUNTER_SALE =
      "\nNo customer was named, so this is a counter sale; --customer names one.";

  private final Supplier<Books> books;

  public QuoteMakeCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote make",
                Group.QUOTE,
                "Plans a job for a customer and keeps it as a numbered quote",
                "quote make --job quotes/hydrant-to-nozzle.yaml --customer COUNTER")
            .alias("make")
            .with(PurchaseOptions.options(books))
            .with(
                OptionSpec.value("export", "KINDS", "write papers at once, such as workbook,pdf")
                    .completingList(() -> Papers.KINDS))
            .with(PaperOptions.options())
            .with(AmendmentOptions.onNew())
            .with(AmendmentOptions.terms(), SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    return PurchaseOptions.isPurchase(in) ? purchase(in, PurchaseOptions.asked(in)) : job(in);
  }

  /**
   * A purchase as scripts read it.
   *
   * @param mightBeLess by so much at most the goods of its jobs could be cheaper
   * @param shared what its jobs share of things there are only so many of
   */
  record Purchased(@JsonUnwrapped Quote quote, Optional<Money> mightBeLess, List<String> shared) {}

  private Answer purchase(Invocation in, AskedPurchase asked) {
    MakePurchase.Made made =
        new MakePurchase(books, in.asker())
            .make(
                new MakePurchase.Request(
                    asked,
                    in.value("export").map(kinds -> PaperOptions.papers("export", kinds, in)),
                    in.value("terms"),
                    AmendmentOptions.changesOfNew(in),
                    SignedBy.name(in)));
    return made.quote()
        .map(
            quote ->
                Answer.of(
                    new Purchased(quote, made.mightBeLess(), made.told()),
                    screen ->
                        QuoteText.of(quote, screen)
                            + (asked.namesBuyer() ? "" : COUNTER_SALE)
                            + PurchaseText.of(quote, made.mightBeLess(), made.told())
                            + said(made.files())))
        .orElseGet(() -> stuck(made.stuck().orElseThrow()));
  }

  private static Answer stuck(MakePurchase.Stuck stuck) {
    return Answer.noSafePlan(
        stuck.plan(),
        screen ->
            stuck.title() + "\n" + PlanText.brief(stuck.plan(), screen) + "\nNothing was quoted.");
  }

  private static String said(List<String> files) {
    return files.isEmpty() ? "" : "\n" + PaperOptions.said(files);
  }

  private Answer job(Invocation in) {
    return JobAnswers.layoutAnswered(
        in, books, true, "Stopped; nothing was quoted.", answers -> job(in, answers));
  }

  private Answer job(Invocation in, LayoutText answers) {
    if (answers.isPartsAlone()) {
      return purchase(in, AskedPurchase.ofParts(answers));
    }
    WrittenJob job = WrittenJob.of(answers);
    Made made =
        new MakeQuote(books, in.asker())
            .make(
                new MakeQuote.Request(
                    job,
                    in.value("export").map(kinds -> PaperOptions.papers("export", kinds, in)),
                    in.value("terms"),
                    AmendmentOptions.changesOfNew(in),
                    SignedBy.name(in)));
    return made.quote()
        .map(quote -> quoted(quote, made.files(), answers.answers().containsKey(JobField.CUSTOMER)))
        .orElseGet(
            () ->
                Answer.noSafePlan(
                    made.plan(),
                    screen -> PlanText.brief(made.plan(), screen) + "\nNothing was quoted."));
  }

  private static Answer quoted(Quote quote, List<String> files, boolean named) {
    return Answer.of(
        quote, screen -> QuoteText.of(quote, screen) + (named ? "" : COUNTER_SALE) + said(files));
  }
}
