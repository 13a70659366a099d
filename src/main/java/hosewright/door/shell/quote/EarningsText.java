package hosewright.door.shell.quote;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.quote.Earnings;
import hosewright.quote.Earnings.LineEarnings;
import hosewright.quote.Margin;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a quote earns, for the dealer's own screen. */
final class EarningsText {
  private EarningsText() {}

  static String of(Earnings earnings, Optional<BigDecimal> floor, Screen screen) {
    Table table = Table.of("#", "item", "net", "cost each", "margin").numbers(0, 2, 3, 4);
    for (LineEarnings line : earnings.lines()) {
      table.row(
          line.position(),
          line.item(),
          line.net().getAmount().toPlainString(),
          line.unitCost().map(Object::toString).orElse("unknown"),
          percent(line.margin()));
    }
    String set =
        earnings.lines().stream()
            .filter(line -> line.setBecause().isPresent())
            .map(
                line ->
                    "\nLine %d is priced by hand: %s"
                        .formatted(line.position(), line.setBecause().orElseThrow()))
            .collect(Collectors.joining());
    String wanted = floor.map(least -> ", floor " + percent(least)).orElse("");
    String unknown = String.join("; ", earnings.all().unknownBecause());
    boolean untold = earnings.all().against(floor) == Margin.Floor.UNKNOWN;
    return "For your eyes only\n\n"
        + table.on(screen)
        + set
        + "\n\nMargin "
        + percent(earnings.all())
        + wanted
        + (unknown.isEmpty() ? "." : ": " + unknown + ".")
        + (untold ? " Whether the floor is kept nobody can tell until every cost is known." : "");
  }

  private static String percent(Margin margin) {
    return margin.fraction().map(EarningsText::percent).orElse("unknown");
  }

  private static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).setScale(1, RoundingMode.FLOOR).toPlainString() + " %";
  }
}
