package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.job.layout.LayoutJob;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Lay;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Billing;
import hosewright.line.goods.SharedCosts.Goods;
import hosewright.line.model.Check;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A whole layout, priced, with the water in it.
 *
 * @param source what its source gives at the flow of everything together
 */
public record FedLayout(
    LayoutSearch.Whole whole, List<FedLeg> legs, Inlet source, Billing.Priced bill, Money total) {

  /** With the fewest parts to source first, then cheapest, then fewest couplings and adapters. */
  static final Comparator<FedLayout> BY_MERIT =
      Comparator.<FedLayout>comparingInt(layout -> layout.bill.partsToSource())
          .thenComparing(FedLayout::total)
          .thenComparingInt(FedLayout::sections)
          .thenComparingInt(FedLayout::adapters)
          .thenComparingDouble(layout -> layout.whole.needsPsi())
          .thenComparing(FedLayout::spelledOut);

  static FedLayout of(
      LayoutJob layout, LayoutSearch.Whole whole, Billing billing, CurrencyUnit currency) {
    Goods goods = whole.goods();
    Billing.Priced bill = billing.price(goods.wanted(), goods.gaskets());
    Inlet source =
        layout
            .supply()
            .map(supply -> new Inlet(supply.pressurePsi(layout.flowGpm()), supply.closedPsi()))
            .orElseGet(() -> new Inlet(whole.needsPsi(), whole.needsPsi()));
    return new FedLayout(
        whole,
        FedLeg.of(whole.legs(), source),
        source,
        bill,
        Basket.sum(bill.purchases(), currency));
  }

  public List<GasketCount> gaskets() {
    return whole.goods().gaskets();
  }

  /** By leg, every check on it. */
  public Map<FedLeg, List<Check>> checks() {
    Map<FedLeg, List<Check>> checks = new LinkedHashMap<>();
    legs.forEach(leg -> checks.put(leg, leg.checks(bill.purchases())));
    return checks;
  }

  /** Whether nothing fails that another choice of parts could mend. */
  boolean bestThatCanBe() {
    return checks().values().stream()
        .flatMap(List::stream)
        .noneMatch(check -> check.outcome() == Check.Outcome.FAIL && !check.id().isOfTheJob());
  }

  /** By how much it misses what the source gives and what its parts bear, psi. */
  double missedPsi() {
    return Math.max(0, whole.needsPsi() - source.flowingPsi())
        + Math.max(0, source.closedPsi() - whole.bearsPsi());
  }

  /** The leg whose appliance has least to spare. */
  public FedLeg worstOff() {
    return legs.stream()
        .filter(leg -> leg.laid().asked().last())
        .min(Comparator.comparingDouble(FedLeg::sparePsi))
        .orElseThrow();
  }

  private int sections() {
    return legs.stream()
        .mapToInt(
            leg ->
                leg.line().lays().stream().mapToInt(Lay::sections).sum()
                    * leg.laid().asked().copies())
        .sum();
  }

  private int adapters() {
    return legs.stream().mapToInt(leg -> leg.line().adapters()).sum();
  }

  private String spelledOut() {
    StringBuilder words = new StringBuilder();
    legs.forEach(leg -> words.append(leg.line().spelledOut()));
    return words.toString();
  }
}
