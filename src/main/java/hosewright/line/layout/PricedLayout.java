package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.line.assembly.Lay;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Billing;
import hosewright.line.goods.Goods;
import hosewright.line.layout.search.Divider;
import hosewright.line.layout.search.LaidLeg;
import hosewright.line.layout.search.Whole;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A whole layout, priced, before the dearer work of putting water into it. */
public record PricedLayout(Whole whole, Billing.Priced bill, Money total) {

  /** With the fewest parts to source first, then cheapest, then fewest couplings and adapters. */
  static final Comparator<PricedLayout> BY_MERIT =
      Comparator.<PricedLayout>comparingInt(layout -> layout.bill.partsToSource())
          .thenComparing(PricedLayout::total)
          .thenComparingInt(PricedLayout::sections)
          .thenComparingInt(PricedLayout::adapters)
          .thenComparingDouble(layout -> layout.whole.needsPsi())
          .thenComparing(PricedLayout::spelledOut);

  static PricedLayout of(Whole whole, Billing billing, CurrencyUnit currency) {
    Goods goods = whole.goods();
    Billing.Priced bill = billing.price(goods.wanted(), goods.gaskets());
    return new PricedLayout(whole, bill, Basket.sum(bill.purchases(), currency));
  }

  /** By how much it misses what a source gives and what its parts bear, psi. */
  double missedPsi(Inlet source) {
    return Math.max(0, whole.needsPsi() - source.flowingPsi())
        + Math.max(0, source.closedPsi() - whole.bearsPsi())
        + legs().mapToDouble(PricedLayout::overReliefPsi).sum();
  }

  /** By how much what a leg's pump must bring is over what its relief valve lets stand, psi. */
  private static double overReliefPsi(LaidLeg leg) {
    return leg.divider()
        .flatMap(Divider::boost)
        .map(
            boost ->
                leg.behind().stream()
                    .mapToDouble(next -> Math.max(0, next.needsPsi() - boost.reliefPsi()))
                    .max()
                    .orElse(0))
        .orElse(0.0);
  }

  private Stream<LaidLeg> legs() {
    return whole.legs().stream().flatMap(LaidLeg::all);
  }

  private int sections() {
    return legs()
        .mapToInt(
            leg ->
                leg.way().line().lays().stream().mapToInt(Lay::sections).sum()
                    * leg.asked().copies())
        .sum();
  }

  private int adapters() {
    return legs().mapToInt(leg -> leg.way().line().adapters()).sum();
  }

  private String spelledOut() {
    return legs().map(leg -> leg.way().line().spelledOut()).collect(Collectors.joining());
  }
}
