package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.quote.IssueQuote;
import hosewright.desk.quote.IssueQuote.Validity;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.run.Notices;
import hosewright.door.shell.screen.Answer;
import hosewright.problem.BadInputException;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Issues a quote: from then on it is what the buyer holds in hand, and never changes. */
public final class QuoteIssueCommand extends ShellCommand {
  private static final int LONGEST_DAYS = 3650;

  private final IssueQuote issueQuote;
  private final Notices notices;

  public QuoteIssueCommand(Supplier<Books> books, Notices notices) {
    super(
        CommandSpec.of(
                "quote issue",
                Group.QUOTE,
                "Issues a quote with its validity and lead time; it never changes afterwards",
                "quote issue Q-000001 --valid-days 45 --lead-days 10")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("valid-days", "DAYS", "how many days it holds from today")
                    .withDefaultSaid("the dealer's validity_days"),
                OptionSpec.value("valid-until", "YYYY-MM-DD", "its last day instead"),
                OptionSpec.value("lead-days", "DAYS", "calendar days from a firm order")
                    .withDefaultSaid("as stock and suppliers have it"),
                OptionSpec.flag(
                    "allow-below-floor", "issue it though it earns less than the customer's floor"),
                OptionSpec.value(
                    "unknown-margin-by",
                    "NAME",
                    "who says yes to issuing it while a cost is not known"),
                OptionSpec.value("export", "KINDS", "write papers at once, such as workbook,pdf")
                    .completingList(() -> Papers.KINDS),
                SignedBy.option())
            .with(PaperOptions.options()));
    this.issueQuote = new IssueQuote(books);
    this.notices = notices;
  }

  /** What the buyer holds in hand. */
  record Promise(
      String number,
      int revision,
      Quote.Status status,
      LocalDate validUntil,
      int leadDays,
      String by,
      List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Optional<Papers> papers =
        in.value("export").map(kinds -> PaperOptions.papers("export", kinds, in));
    IssueQuote.Issued issued =
        issueQuote.issue(
            new IssueQuote.Request(
                in.argument(0).orElseThrow(),
                validity(in),
                days(in, "lead-days"),
                in.flag("allow-below-floor"),
                in.value("unknown-margin-by"),
                papers,
                SignedBy.name(in)));
    Quote quote = issued.quote();
    if (issued.step().floor() == Margin.Floor.UNKNOWN) {
      notices.say(
          ("Not every cost is known, so nobody can tell whether the margin floor is kept: see"
                  + " 'quote show %s --internal'.")
              .formatted(quote.number()));
    }
    String by = issued.step().by();
    return Answer.of(
        new Promise(
            quote.number(),
            quote.revision(),
            quote.status(),
            quote.validity().validUntil(),
            quote.validity().leadDays(),
            by,
            issued.files()),
        "Issued %s revision %d by %s: valid until %s, ready %d days after a firm order.%s"
            .formatted(
                quote.number(),
                quote.revision(),
                by,
                quote.validity().validUntil(),
                quote.validity().leadDays(),
                issued.files().isEmpty() ? "" : "\n" + PaperOptions.said(issued.files())));
  }

  private static Validity validity(Invocation in) {
    OptionalInt days = days(in, "valid-days");
    Optional<String> until = in.value("valid-until");
    try {
      return new Validity(days, until.map(LocalDate::parse));
    } catch (DateTimeParseException e) {
      throw new BadInputException(
          "valid-until", until.get(), "a day from today on, written year-month-day");
    }
  }

  private static OptionalInt days(Invocation in, String option) {
    Optional<String> text = in.value(option);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!text.get().matches("\\d{1,4}") || Integer.parseInt(text.get()) > IssueQuote.LONGEST_DAYS) {
      throw new BadInputException(
          option, text.get(), "a whole number of days from 0 to " + IssueQuote.LONGEST_DAYS);
    }
    return OptionalInt.of(Integer.parseInt(text.get()));
  }
}
