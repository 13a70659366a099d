package hosewright.line.plan;

import hosewright.hydraulics.LineElement;
import hosewright.job.layout.LayoutJob;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.LayoutFlow;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.Unthrottled;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What comes to each appliance of a layout: as planned, with all open, and alone. */
final class AppliancesFed {
  private final LayoutJob layout;
  private final FedLayout fed;
  private final Optional<LineElement> strainer;

  /**
   * @param strainer what the water passes first where it is drawn
   */
  AppliancesFed(LayoutJob layout, FedLayout fed, Optional<? extends LineElement> strainer) {
    this.layout = layout;
    this.fed = fed;
    this.strainer = strainer.map(one -> one);
  }

  List<LinePlan.OfLeg> all() {
    Optional<LayoutFlow> flow = flow();
    List<LinePlan.OfLeg> all = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      if (leg.laid().asked().last()) {
        boolean throttles = leg.hydraulics().calculated() && layout.supply().isPresent();
        all.add(
            new LinePlan.OfLeg(
                leg.name(),
                leg.job().flowGpm(),
                leg.laid().needPsi(),
                leg.hydraulics().reactionLbf(),
                throttles ? Math.max(0, leg.sparePsi()) : 0,
                flow.flatMap(found -> unthrottled(found, leg))));
      }
    }
    return all;
  }

  private Optional<LayoutFlow> flow() {
    boolean known =
        (layout.supply().isPresent() || strainer.isPresent())
            && fed.legs().stream().allMatch(leg -> leg.hydraulics().calculated());
    return known ? Optional.of(LayoutFlow.of(layout, fed, strainer)) : Optional.empty();
  }

  /** Of legs that meet at one appliance each has its share of what comes there as planned. */
  private Optional<Unthrottled> unthrottled(LayoutFlow flow, FedLeg leg) {
    double share = share(leg);
    return flow.appliances().stream()
        .filter(one -> one.leg().equals(leg.together()))
        .map(
            one ->
                new Unthrottled(
                    one.flowGpm() * share,
                    one.deliveredPsi(),
                    one.aloneGpm() * share,
                    one.alonePsi()))
        .findFirst();
  }

  private double share(FedLeg leg) {
    double allGpm =
        fed.legs().stream()
            .filter(other -> other.together().equals(leg.together()))
            .mapToDouble(other -> other.job().flowGpm())
            .sum();
    return leg.job().flowGpm() / allGpm;
  }
}
