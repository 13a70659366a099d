package hosewright.command;

import hosewright.desk.Books;
import hosewright.quote.Earnings;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.quote.QuoteStore.Logged;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows one quote as it was made. */
final class QuoteShowCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote show", Group.QUOTE, "Shows a quote as it was made", "quote show Q-000001")
            .with(QuoteChoice.argument(books))
            .with(
                QuoteChoice.revision(),
                OptionSpec.flag("internal", "with cost and margin: not for the buyer's eyes")));
    this.books = books;
  }

  /**
   * A quote with what it earns.
   *
   * @param standing how that is to the floor; unknown while a cost is not known
   */
  record Internal(
      Quote quote, Earnings earnings, Optional<BigDecimal> floor, Margin.Standing standing) {}

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote quote = QuoteChoice.of(in, open);
      List<Logged> steps =
          open.quotes().steps(quote.number()).stream()
              .filter(logged -> logged.revision() == quote.revision())
              .toList();
      ZoneId zone = open.zone();
      if (!in.flag("internal")) {
        return Answer.of(quote, screen -> text(quote, steps, zone, screen));
      }
      Earnings earnings = Costs.earnings(open, quote);
      Optional<BigDecimal> floor = Costs.floor(open, quote);
      return Answer.of(
          new Internal(quote, earnings, floor, earnings.all().against(floor)),
          screen ->
              text(quote, steps, zone, screen) + "\n\n" + Costs.text(earnings, floor, screen));
    }
  }

  private static String text(Quote quote, List<Logged> steps, ZoneId zone, Screen screen) {
    StringBuilder text = new StringBuilder(QuoteText.of(quote, screen));
    for (Logged logged : steps) {
      text.append("\n- ").append(SignedBy.words(logged.step(), zone));
    }
    return text.toString();
  }
}
