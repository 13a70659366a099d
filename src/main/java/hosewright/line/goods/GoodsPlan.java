package hosewright.line.goods;

import hosewright.line.model.Bill;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Layout;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Goods bought as such, in the form of a plan: nothing is laid, joined or calculated. */
public final class GoodsPlan {
  private GoodsPlan() {}

  /**
   * A plan of goods alone.
   *
   * @param items priced goods
   * @param unpriced what could not be priced
   */
  public static LinePlan of(
      String summary,
      List<Bill.Item> items,
      List<Unpriced> unpriced,
      List<String> cautions,
      LocalDate date,
      CurrencyUnit currency) {
    Money total =
        items.stream()
            .flatMap(item -> item.extended().stream())
            .reduce(Money.zero(currency), Money::plus);
    return new LinePlan(
        new LinePlan.Asked(summary, 0, 0, List.of()),
        new LinePlan.Answer(true, Optional.empty(), List.of(), cautions),
        Layout.NONE,
        Hydraulics.notCalculated("not calculated, since no line is planned"),
        List.of(),
        new Bill(items, unpriced, total, date, Bill.Gaskets.NONE, List.of(), List.of()),
        new LinePlan.Weighed(List.of(), new LinePlan.Searched(0, 0, 0, 0)));
  }
}
