package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.MoneyWords;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.math.BigDecimal;
import java.util.Optional;

/** What a quote costs the dealer, for the dealer's own screen. */
final class Costs {
  private Costs() {}

  /** The margin at the costs in force on the day of the quote. */
  static Margin margin(Books books, Quote quote) {
    Catalogue catalogue = books.catalogue();
    return Margin.of(quote, line -> catalogue.cost(line.item(), quote.date()));
  }

  static String text(Margin margin, Screen screen) {
    Table table = Table.of("#", "item", "net", "cost", "margin").numbers(0, 2, 3, 4);
    for (Margin.LineMargin line : margin.lines()) {
      table.row(
          line.position(),
          line.item(),
          line.net().getAmount().toPlainString(),
          line.cost().map(cost -> cost.getAmount().toPlainString()).orElse("unknown"),
          percent(line.fraction()));
    }
    String unknown =
        margin.unknown().isEmpty()
            ? ""
            : " The cost of lines " + margin.unknown() + " is not known; they are left out.";
    return "For your eyes only\n\n"
        + table.on(screen)
        + "\n\nCost %s of %s: margin %s.%s"
            .formatted(
                MoneyWords.of(margin.cost()),
                MoneyWords.of(margin.net()),
                percent(margin.fraction()),
                unknown);
  }

  private static String percent(Optional<BigDecimal> fraction) {
    return fraction.map(part -> part.movePointRight(2).toPlainString() + " %").orElse("unknown");
  }
}
