package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.order.SupplierAnswer;
import hosewright.quote.Earnings;
import hosewright.quote.Earnings.LineEarnings;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What a quote earns, for the dealer's own screen. */
final class Costs {
  private Costs() {}

  /** The earnings at the costs in force on the day of the quote. */
  static Earnings earnings(Books books, Quote quote) {
    Catalogue catalogue = books.itemsOf(quote);
    List<SupplierAnswer> answers = books.orders().answers(quote.number());
    return Earnings.of(
        quote,
        line ->
            catalogue
                .cost(line.item(), quote.date())
                .or(
                    () ->
                        answers.stream()
                            .filter(answer -> answer.chosen())
                            .filter(answer -> answer.wanted().equals(line.key()))
                            .findFirst()
                            .map(Costs::landedEach)));
  }

  private static Money landedEach(SupplierAnswer answer) {
    return answer.landed().dividedBy(answer.quantity(), RoundingMode.HALF_UP);
  }

  /** The least margin wanted of the quote's buyer. */
  static Optional<BigDecimal> floor(Books books, Quote quote) {
    return books.marginFloors().of(quote.customer());
  }

  static String text(Earnings earnings, Optional<BigDecimal> floor, Screen screen) {
    Table table = Table.of("#", "item", "net", "cost each", "margin").numbers(0, 2, 3, 4);
    for (LineEarnings line : earnings.lines()) {
      table.row(
          line.position(),
          line.item(),
          line.net().getAmount().toPlainString(),
          line.unitCost().map(Object::toString).orElse("unknown"),
          percent(line.margin()));
    }
    String wanted = floor.map(least -> ", floor " + percent(least)).orElse("");
    String unknown = String.join("; ", earnings.all().unknownBecause());
    boolean untold = earnings.all().against(floor) == Margin.Standing.UNKNOWN;
    return "For your eyes only\n\n"
        + table.on(screen)
        + "\n\nMargin "
        + percent(earnings.all())
        + wanted
        + (unknown.isEmpty() ? "." : ": " + unknown + ".")
        + (untold ? " Whether the floor is kept nobody can tell until every cost is known." : "");
  }

  private static String percent(Margin margin) {
    return margin.fraction().map(Costs::percent).orElse("unknown");
  }

  private static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).setScale(1, RoundingMode.FLOOR).toPlainString() + " %";
  }
}
