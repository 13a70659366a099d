package hosewright.door.shell.quote;

import hosewright.catalogue.MoneyWords;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What is worth saying of a purchase when it is made, beside its quote. */
final class PurchaseText {
  private PurchaseText() {}

  /**
   * Parts that couple to nothing beside them, and how near the plans are to the best there can be.
   *
   * @param mightBeLess by so much at most the goods of its jobs could be cheaper
   * @param told what its jobs share of things there are only so many of
   */
  static String of(Quote quote, Optional<Money> mightBeLess, List<String> told) {
    StringBuilder text = new StringBuilder();
    quote.groups().stream()
        .filter(group -> !group.laid())
        .map(Group::plan)
        .flatMap(plan -> plan.cautions().stream())
        .forEach(caution -> text.append("\nTake care: ").append(caution));
    told.forEach(sentence -> text.append('\n').append(sentence));
    mightBeLess
        .map(
            money ->
                money.isPositive()
                    ? "No other way to lay these jobs together is more than "
                        + MoneyWords.of(money)
                        + " cheaper."
                    : "No other way to lay these jobs together is cheaper.")
        .ifPresent(sentence -> text.append('\n').append(sentence));
    return text.toString();
  }
}
