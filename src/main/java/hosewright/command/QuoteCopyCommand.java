package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Signing;
import hosewright.jobfile.JobFile;
import hosewright.line.JobField;
import hosewright.quote.Amendments;
import hosewright.quote.Customer;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Makes a new quote of the same parts at today's prices. */
final class QuoteCopyCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteCopyCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote copy",
                Group.QUOTE,
                "Makes a new quote of the same parts at today's prices, for the same or another"
                    + " buyer",
                "quote copy Q-000001 --customer DUNMERE-CON")
            .with(QuoteChoice.argument(books))
            .with(
                QuoteChoice.revision(),
                OptionSpec.value("customer", "ID", "whom it is for")
                    .withDefaultSaid("the same buyer")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("title", "TEXT", "a short name for the papers")
                    .withDefaultSaid("the same"),
                AmendmentOptions.terms(),
                SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.of(in, open);
      String id = in.value("customer").orElse(seen.customer().id());
      Customer customer = open.customers().get(id, open.today());
      String title =
          in.value("title").map(text -> Signing.text("title", text, 200)).orElse(seen.title());
      Map<JobField, String> job = JobFile.parse(seen.jobYaml());
      job.put(JobField.TITLE, title);
      job.put(JobField.CUSTOMER, id);
      job.remove(JobField.DATE);
      Amendments amendments = Revising.withTerms(in.value("terms"), open, kept(seen, customer));
      Quote copy =
          open.quotes()
              .saveNew(
                  number ->
                      open.revisions()
                          .copied(seen, number, customer, title, JobFile.write(job), amendments),
                  Signing.as(
                      SignedBy.name(in),
                      Step.COPY,
                      open.now(),
                      "from " + seen.number() + "-r" + seen.revision()));
      return Answer.of(copy, screen -> QuoteText.of(copy, screen));
    }
  }

  /** Discounts and notes were for one buyer and do not go to another. */
  private static Amendments kept(Quote seen, Customer customer) {
    Amendments all = seen.amendments().because("");
    return customer.id().equals(seen.customer().id())
        ? all
        : new Amendments("", all.quantities(), Map.of(), all.extraLines(), List.of(), all.terms());
  }
}
