package hosewright.hydraulics.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the flows wanted at the ends need. */
final class FlowsGiven {
  private final Network network;
  private final Map<String, Double> wantedGpm;
  private final Places places;

  /**
   * @param wantedGpm by end, for each of its copies
   */
  FlowsGiven(Network network, Map<String, Double> wantedGpm) {
    this.network = network;
    this.wantedGpm = wantedGpm;
    this.places = new Places(network);
  }

  Required required() {
    double[] psi = new double[places.count()];
    Map<String, Double> flowGpm = new HashMap<>();
    if (network.joins()) {
      psi = share(flowGpm);
    } else {
      sumUp(flowGpm);
      walkDown(flowGpm, psi);
    }
    raise(flowGpm, psi);
    Map<String, Integer> open =
        wantedGpm.keySet().stream().collect(Collectors.toMap(end -> end, network::copies));
    NetworkState state = new StateWriter(network, places, flowGpm, open).state(psi);
    return new Required(
        state, new Needs(network, state).psi(), new Throttling(network, state).psi());
  }

  private double wantedGpm(Node node) {
    return node instanceof Node.End ? wantedGpm.get(node.name()) * network.copies(node.name()) : 0;
  }

  /** Without joins every flow is the sum of the flows behind it. */
  private void sumUp(Map<String, Double> flowGpm) {
    for (int i = network.nodes().size() - 1; i >= 0; i--) {
      Node node = network.nodes().get(i);
      double gpm = wantedGpm(node);
      for (Link link : network.outOf(node.name())) {
        gpm += flowGpm.get(link.name());
      }
      for (Link link : network.into(node.name())) {
        flowGpm.put(link.name(), gpm);
      }
    }
  }

  /** Pressures below that of the source, whatever that will be. */
  private void walkDown(Map<String, Double> flowGpm, double[] psi) {
    for (Node node : network.nodes()) {
      for (Link link : network.into(node.name())) {
        double oneLineGpm = flowGpm.get(link.name()) / link.copies() / link.lines();
        psi[places.in(node.name())] = psi[places.out(link.begins())] - link.takesPsi(oneLineGpm);
        if (node instanceof Node.Pump pump) {
          psi[places.out(node.name())] =
              psi[places.in(node.name())]
                  + Places.goingOn(pump.boost()).applyAsDouble(flowGpm.get(link.name()));
        }
      }
    }
  }

  /** Where links meet, flows share by equal loss; gives the pressures at which they do. */
  private double[] share(Map<String, Double> flowGpm) {
    Map<String, Arc> ofLinks = new HashMap<>();
    network.links().forEach(link -> ofLinks.put(link.name(), places.arc(link, link.copies())));
    List<Arc> arcs = new ArrayList<>(ofLinks.values());
    for (Node.Pump pump : network.nodes(Node.Pump.class)) {
      arcs.add(places.arc(pump, Places.goingOn(pump.boost()), Arc.ANY_GPM));
    }
    Map<String, Integer> parts = network.parts();
    for (Node.Source source : network.nodes(Node.Source.class)) {
      arcs.add(arc(source, parts));
    }
    double[] taken = new double[places.count()];
    network.nodes().forEach(node -> taken[places.in(node.name())] = wantedGpm(node));
    double[] psi = new Balance(arcs, taken).psi(new double[places.count()]);
    ofLinks.forEach((name, arc) -> flowGpm.put(name, arc.flowGpm(Balance.drop(arc, psi))));
    return psi;
  }

  private Arc arc(Node.Source source, Map<String, Integer> parts) {
    boolean known =
        network.nodes(Node.Source.class).stream()
            .filter(other -> parts.get(other.name()).equals(parts.get(source.name())))
            .allMatch(other -> other.supply().isPresent());
    return places.arc(
        source, known ? Places.goingOn(source.supply().get()) : flow -> 0, Arc.ANY_GPM);
  }

  /** Moves each part to the least pressure at which every end and intake has what it needs. */
  private void raise(Map<String, Double> flowGpm, double[] psi) {
    Map<String, Integer> parts = network.parts();
    Map<Integer, Double> byPsi = new HashMap<>();
    for (Node node : network.nodes()) {
      int part = parts.get(node.name());
      if (node instanceof Node.End end) {
        double need = end.demand().needPsi(wantedGpm.get(end.name()));
        byPsi.merge(part, need - psi[places.in(end.name())], Math::max);
      } else if (node instanceof Node.Pump pump && flows(pump, flowGpm)) {
        byPsi.merge(part, pump.leastIntakePsi() - psi[places.in(pump.name())], Math::max);
      }
    }
    for (Node node : network.nodes()) {
      double more = byPsi.get(parts.get(node.name()));
      psi[places.in(node.name())] += more;
      if (node instanceof Node.Pump) {
        psi[places.out(node.name())] += more;
      }
    }
  }

  private boolean flows(Node.Pump pump, Map<String, Double> flowGpm) {
    return network.into(pump.name()).stream().anyMatch(link -> flowGpm.get(link.name()) > 1e-4);
  }
}
