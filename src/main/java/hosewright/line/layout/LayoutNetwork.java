package hosewright.line.layout;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.PortLoss;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.network.Link;
import hosewright.hydraulics.network.Network;
import hosewright.hydraulics.network.Node;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.line.assembly.Placed;
import hosewright.line.layout.search.Divider;
import hosewright.line.layout.search.LaidLeg;
import hosewright.line.model.Role;
import hosewright.line.water.FittingLoss;
import hosewright.line.water.Outflow;
import hosewright.line.water.PlanHydraulics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A laid layout as a net of links, so that what flows through it can be sought. */
final class LayoutNetwork {
  private static final String SOURCE = "source";

  private final LayoutJob layout;
  private final FedLayout fed;
  private final Optional<LineElement> strainer;
  private final Map<String, Double> throttledPsi;

  /**
   * @param strainer what the water passes first where it is drawn
   * @param throttledPsi by how much each pump gives less than its curve, psi, by the leg before it
   */
  LayoutNetwork(
      LayoutJob layout,
      FedLayout fed,
      Optional<LineElement> strainer,
      Map<String, Double> throttledPsi) {
    this.layout = layout;
    this.fed = fed;
    this.strainer = strainer;
    this.throttledPsi = throttledPsi;
  }

  Network network() {
    List<Node> nodes = new ArrayList<>();
    nodes.add(new Node.Source(SOURCE, source()));
    List<Link> links = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      if (nodes.stream().noneMatch(node -> node.name().equals(leg.together()))) {
        nodes.add(end(leg));
      }
      String begins = leg.before().map(FedLeg::together).orElse(SOURCE);
      links.add(
          new Link(
              leg.name(), begins, leg.together(), elements(leg), 1, leg.laid().asked().copies()));
    }
    return new Network(nodes, links);
  }

  private Supply source() {
    return strainer.isPresent()
        ? new Inlet(0, 0)
        : layout.supply().orElseThrow(() -> new IllegalStateException("no source is stated"));
  }

  private Node end(FedLeg leg) {
    if (leg.laid().asked().last()) {
      return new Node.End(leg.together(), outflow(leg));
    }
    return leg.laid()
        .divider()
        .flatMap(Divider::pump)
        .map(
            pump ->
                (Node)
                    new Node.Pump(leg.together(), curve(leg, pump), pump.boost().leastIntakePsi()))
        .orElseGet(() -> new Node.Junction(leg.together()));
  }

  /** Of an appliance that several legs end at, with the flow of all. */
  private Demand outflow(FedLeg leg) {
    Job job = leg.job();
    double allGpm =
        fed.legs().stream()
            .filter(other -> other.together().equals(leg.together()))
            .mapToDouble(other -> other.job().flowGpm())
            .sum();
    return Outflow.ofOne(leg.meeting().isEmpty() ? job : job.flowing(allGpm, leg.laid().needPsi()));
  }

  private PumpCurve curve(FedLeg leg, Divider.Pump pump) {
    double lessPsi = throttledPsi.getOrDefault(leg.name(), 0.0);
    return new PumpCurve(
        pump.curve().points().stream()
            .map(point -> new PumpCurve.Point(point.flowGpm(), Math.max(0, point.psi() - lessPsi)))
            .toList());
  }

  private List<LineElement> elements(FedLeg leg) {
    List<LineElement> elements = new ArrayList<>();
    if (leg.before().isPresent()) {
      port(leg, leg.before().get()).ifPresent(elements::add);
    } else {
      strainer.ifPresent(elements::add);
    }
    elements.addAll(PlanHydraulics.elements(leg.job(), leg.line()));
    return elements;
  }

  private static Optional<LineElement> port(FedLeg leg, FedLeg before) {
    Divider divider = before.laid().divider().orElseThrow();
    if (divider.pump().isPresent()) {
      return Optional.empty();
    }
    Placed part = divider.towards(place(leg, before));
    if (part.role() == Role.JOIN) {
      return Optional.of(FittingLoss.of(part));
    }
    return Optional.of(new PortLoss(FittingLoss.of(part), part.branches()));
  }

  private static int place(FedLeg leg, FedLeg before) {
    List<LaidLeg> behind = before.laid().behind();
    int place = 0;
    while (!behind.get(place).asked().name().equals(leg.together())) {
      place++;
    }
    return place;
  }
}
