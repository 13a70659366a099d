package hosewright.line;

import hosewright.line.LinePlan.PlanItem;
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
   * @param unpriced what could not be priced, in words
   */
  public static LinePlan of(
      String summary,
      List<PlanItem> items,
      List<String> unpriced,
      List<String> cautions,
      LocalDate date,
      CurrencyUnit currency) {
    return new LinePlan(
        true,
        Optional.empty(),
        List.of(),
        cautions,
        summary,
        0,
        0,
        "",
        0,
        0,
        0,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new LinePlan.Gaskets(0, 0, 0),
        0,
        0,
        LineHydraulicsResult.notCalculated("not calculated, since no line is planned"),
        List.of(),
        items,
        date,
        unpriced,
        items.stream()
            .map(item -> item.extended().orElse(Money.zero(currency)))
            .reduce(Money.zero(currency), Money::plus),
        List.of(),
        new LinePlan.Searched(0, 0, 0, 0),
        List.of(),
        List.of(),
        Layout.ONE_LINE);
  }
}
