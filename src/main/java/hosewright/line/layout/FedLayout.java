package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.line.assembly.GasketCount;
import hosewright.line.goods.Billing;
import hosewright.line.layout.search.Whole;
import hosewright.line.model.Check;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * A whole layout with the water in it.
 *
 * @param source what its source gives at the flow of everything together
 * @param checks on each leg, the legs in the order water meets them
 */
public record FedLayout(PricedLayout priced, Inlet source, Map<FedLeg, List<Check>> checks) {

  static FedLayout of(PricedLayout priced, Inlet source) {
    Map<FedLeg, List<Check>> checks = new LinkedHashMap<>();
    for (FedLeg leg : FedLeg.of(priced.whole().legs(), source)) {
      checks.put(leg, leg.checks(priced.bill().purchases()));
    }
    return new FedLayout(priced, source, checks);
  }

  public List<FedLeg> legs() {
    return List.copyOf(checks.keySet());
  }

  public Whole whole() {
    return priced.whole();
  }

  public Billing.Priced bill() {
    return priced.bill();
  }

  public Money total() {
    return priced.total();
  }

  public List<GasketCount> gaskets() {
    return whole().goods().gaskets();
  }

  /** By how much it misses what its source gives and what its parts bear, psi. */
  double missedPsi() {
    return priced.missedPsi(source);
  }

  /** Whether nothing fails that another choice of parts could mend. */
  boolean bestThatCanBe() {
    return checks.values().stream()
        .flatMap(List::stream)
        .noneMatch(check -> check.outcome() == Check.Outcome.FAIL && !check.id().isOfTheJob());
  }

  /** The leg whose appliance has least to spare. */
  public FedLeg worstOff() {
    return checks.keySet().stream()
        .filter(leg -> leg.laid().asked().last())
        .min(Comparator.comparingDouble(FedLeg::sparePsi))
        .orElseThrow();
  }
}
