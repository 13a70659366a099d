package hosewright.door.shell.quote;

import hosewright.catalogue.MoneyWords;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.quote.QuoteDiff;
import hosewright.quote.QuoteDiff.Change;
import hosewright.quote.QuoteDiff.LineChange;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What changed between two quotes, as a person reads it. */
final class DiffText {
  private DiffText() {}

  static String of(QuoteDiff diff, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "From "
            + diff.from()
            + " to "
            + diff.to()
            + (diff.why().isEmpty() ? "." : ": " + diff.why()));
    changes(prose, "The job", diff.job());
    if (!diff.lines().isEmpty()) {
      prose.block(lines(diff.lines(), screen));
    }
    changes(prose, "Besides", diff.rest());
    if (diff.job().isEmpty() && diff.lines().isEmpty() && diff.rest().isEmpty()) {
      prose.line("Nothing the buyer would notice.");
    }
    prose.line(
        "Freight %s, tax %s; total %s to %s: %s."
            .formatted(
                signed(diff.sums().freightDifference()),
                signed(diff.sums().taxDifference()),
                diff.sums().totalBefore().getAmount().toPlainString(),
                MoneyWords.of(diff.sums().totalAfter()),
                signed(diff.sums().totalDifference())));
    return prose.toString();
  }

  private static void changes(Prose prose, String heading, List<Change> changes) {
    if (!changes.isEmpty()) {
      prose.line(heading);
      changes.forEach(
          change ->
              prose.line(
                  "  ",
                  "- %s: %s -> %s"
                      .formatted(change.what(), said(change.before()), said(change.after()))));
    }
  }

  private static String said(String text) {
    return text.isEmpty() ? "nothing" : text;
  }

  private static String lines(List<LineChange> changes, Screen screen) {
    Table table = Table.of("item", "description", "qty", "each", "amount", "why").numbers(2, 3, 4);
    for (LineChange change : changes) {
      table.row(
          change.item(),
          change.description(),
          moved("" + change.before().quantity(), "" + change.after().quantity()),
          moved(amount(change.before().unit()), amount(change.after().unit())),
          signed(change.difference()),
          change.why());
    }
    return table.on(screen);
  }

  private static String moved(String before, String after) {
    return before.equals(after) ? before : before + " -> " + after;
  }

  private static String amount(Optional<Money> money) {
    return money.map(sum -> sum.getAmount().toPlainString()).orElse("-");
  }

  private static String signed(Money money) {
    return (money.isPositive() ? "+" : "") + money.getAmount().toPlainString();
  }
}
