package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.order.SupplierAnswer;
import hosewright.problem.BadInputException;
import hosewright.quote.Dealer;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.QuoteMaker;
import hosewright.quote.Signed;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Notices;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Issues a quote: from then on it is what the buyer holds in hand, and never changes. */
final class QuoteIssueCommand extends ShellCommand {
  private static final int LONGEST_DAYS = 3650;

  private final Supplier<Books> books;
  private final Notices notices;

  QuoteIssueCommand(Supplier<Books> books, Notices notices) {
    super(
        CommandSpec.of(
                "quote issue",
                Group.QUOTE,
                "Issues a quote with its validity and lead time; it never changes afterwards",
                "quote issue Q-000001 --valid-days 45 --lead-days 10")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("valid-days", "DAYS", "how many days it holds from today")
                    .withDefaultSaid("the dealer's validity_days"),
                OptionSpec.value("valid-until", "YYYY-MM-DD", "its last day instead"),
                OptionSpec.value("lead-days", "DAYS", "calendar days from a firm order")
                    .withDefaultSaid("as stock and suppliers have it"),
                OptionSpec.flag(
                    "allow-below-floor", "issue it though it earns less than the customer's floor"),
                OptionSpec.value("export", "KINDS", "write papers at once, such as workbook,pdf")
                    .completingList(() -> Papers.KINDS),
                SignedBy.option())
            .with(PaperOptions.options()));
    this.books = books;
    this.notices = notices;
  }

  record Issued(
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
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(in, open);
      QuoteLife.take(seen, Step.ISSUE);
      LocalDate validUntil = validUntil(in, open);
      int leadDays = days(in, "lead-days", 0).orElseGet(() -> leadDays(open, seen));
      papers.ifPresent(all -> all.places(seen.number(), seen.revision()));
      Signed step = signed(in, open, seen);
      Quote issued = open.quotes().issue(seen, validUntil, leadDays, step);
      if (step.floor() == Margin.Standing.UNKNOWN) {
        notices.say(
            ("Not every cost is known, so nobody can tell whether the margin floor is kept: see"
                    + " 'quote show %s --internal'.")
                .formatted(issued.number()));
      }
      Dealer dealer = Papers.dealer(open.terms());
      List<String> files = papers.map(all -> all.write(issued, dealer)).orElse(List.of());
      return Answer.of(
          new Issued(
              issued.number(),
              issued.revision(),
              issued.status(),
              issued.validUntil(),
              issued.leadDays(),
              step.by(),
              files),
          "Issued %s revision %d by %s: valid until %s, ready %d days after a firm order.%s"
              .formatted(
                  issued.number(),
                  issued.revision(),
                  step.by(),
                  issued.validUntil(),
                  issued.leadDays(),
                  files.isEmpty() ? "" : "\n" + PaperOptions.said(files)));
    }
  }

  /** As stock and suppliers have it, with what suppliers answered for parts asked of them. */
  private static int leadDays(Books open, Quote quote) {
    List<String> keys = quote.lines().stream().map(Quote.QuoteLine::key).toList();
    int asked =
        open.orders().answers(quote.number()).stream()
            .filter(answer -> answer.chosen() && keys.contains(answer.wanted()))
            .mapToInt(SupplierAnswer::leadDays)
            .max()
            .orElse(0);
    return Math.max(asked, quote.leadDays());
  }

  /** The step, marked when it goes out under the floor or nobody can tell. */
  private static Signed signed(Invocation in, Books open, Quote quote) {
    Signed step = Signing.as(SignedBy.name(in), Step.ISSUE, open.now(), "");
    Margin.Standing standing = Costs.earnings(open, quote).all().against(Costs.floor(open, quote));
    if (standing == Margin.Standing.BELOW && !in.flag("allow-below-floor")) {
      throw new BadInputException(
          "quote",
          quote.number() + "-r" + quote.revision(),
          "it earns less than the floor for "
              + quote.customer().customerClass()
              + " customers; see 'quote show --internal', or say --allow-below-floor");
    }
    return step.at(standing);
  }

  private static LocalDate validUntil(Invocation in, Books open) {
    Optional<Integer> days = days(in, "valid-days", 0);
    Optional<String> date = in.value("valid-until");
    if (days.isPresent() && date.isPresent()) {
      throw new BadInputException("valid-until", date.get(), "say this or --valid-days, not both");
    }
    if (date.isEmpty()) {
      long usual = QuoteMaker.validityDays(open.terms());
      return open.today().plusDays(days.map(Integer::longValue).orElse(usual));
    }
    try {
      LocalDate last = LocalDate.parse(date.get());
      if (!last.isBefore(open.today()) && last.isBefore(open.today().plusDays(LONGEST_DAYS))) {
        return last;
      }
    } catch (DateTimeParseException e) {
      // falls through to the one message for all unusable days
    }
    throw new BadInputException(
        "valid-until", date.get(), "a day from today on, written year-month-day");
  }

  private static Optional<Integer> days(Invocation in, String option, int least) {
    return in.value(option)
        .map(
            text -> {
              if (!text.matches("\\d{1,4}")
                  || Integer.parseInt(text) < least
                  || Integer.parseInt(text) > LONGEST_DAYS) {
                throw new BadInputException(
                    option, text, "a whole number of days from " + least + " to " + LONGEST_DAYS);
              }
              return Integer.parseInt(text);
            });
  }
}
