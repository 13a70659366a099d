package hosewright.line.plan;

import hosewright.hydraulics.LineElement;
import hosewright.job.layout.LayoutJob;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.LayoutFlow;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.Unthrottled;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    Map<String, List<FedLeg>> byEnd = new LinkedHashMap<>();
    fed.legs().stream()
        .filter(leg -> leg.laid().asked().last())
        .forEach(leg -> byEnd.computeIfAbsent(leg.together(), end -> new ArrayList<>()).add(leg));
    return byEnd.values().stream().map(legs -> at(legs, flow)).toList();
  }

  /**
   * @param legs all that end at one appliance
   */
  private LinePlan.OfLeg at(List<FedLeg> legs, Optional<LayoutFlow> flow) {
    FedLeg any = legs.get(0);
    boolean throttles = any.hydraulics().calculated() && layout.supply().isPresent();
    double sparePsi = legs.stream().mapToDouble(FedLeg::sparePsi).min().orElseThrow();
    return new LinePlan.OfLeg(
        any.together(),
        TreeWriter.ends(any),
        legs.stream().mapToDouble(leg -> leg.job().flowGpm()).sum(),
        any.laid().needPsi(),
        any.hydraulics().reactionLbf(),
        throttles ? Math.max(0, sparePsi) : 0,
        flow.flatMap(found -> unthrottled(found, any)));
  }

  private Optional<LayoutFlow> flow() {
    boolean known =
        (layout.supply().isPresent() || strainer.isPresent())
            && fed.legs().stream().allMatch(leg -> leg.hydraulics().calculated());
    return known ? Optional.of(LayoutFlow.of(layout, fed, strainer)) : Optional.empty();
  }

  private static Optional<Unthrottled> unthrottled(LayoutFlow flow, FedLeg leg) {
    return flow.appliances().stream()
        .filter(one -> one.leg().equals(leg.together()))
        .map(
            one ->
                new Unthrottled(one.flowGpm(), one.deliveredPsi(), one.aloneGpm(), one.alonePsi()))
        .findFirst();
  }
}
