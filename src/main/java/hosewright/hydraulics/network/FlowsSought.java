package hosewright.hydraulics.network;

import hosewright.hydraulics.Supply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What sources bring to the ends that are open. */
final class FlowsSought {
  private final Network network;
  private final Map<String, Integer> open;
  private final Places places;

  FlowsSought(Network network, Map<String, Integer> open) {
    this.network = network;
    this.open = open;
    this.places = new Places(network);
  }

  NetworkState state() {
    Map<String, Arc> arcs = arcs();
    double[] psi =
        new Balance(List.copyOf(arcs.values()), new double[places.count()]).psi(closedPsi());
    Map<String, Double> flowGpm = new HashMap<>();
    for (Link link : network.links()) {
      Arc arc = arcs.get("link " + link.name());
      flowGpm.put(link.name(), arc == null ? 0 : arc.flowGpm(Balance.drop(arc, psi)));
    }
    return new StateWriter(network, places, flowGpm, open).state(psi);
  }

  /** Ways the water may go: what leads to no open end only stands under pressure. */
  private Map<String, Arc> arcs() {
    Map<String, Arc> arcs = new LinkedHashMap<>();
    List<String> fed = new ArrayList<>();
    for (int i = network.nodes().size() - 1; i >= 0; i--) {
      Node node = network.nodes().get(i);
      List<Link> links =
          network.outOf(node.name()).stream().filter(link -> fed.contains(link.ends())).toList();
      int ends = open.getOrDefault(node.name(), 0);
      if (links.isEmpty() && ends == 0) {
        continue;
      }
      fed.add(node.name());
      for (Link link : links) {
        int copies = link.copies() == 1 ? 1 : open.get(link.ends());
        arcs.put("link " + link.name(), places.arc(link, copies));
      }
      if (node instanceof Node.Source source) {
        Supply supply = source.supply().orElseThrow();
        arcs.put(node.name(), places.arc(source, supply::pressurePsi, supply.mostFlowGpm()));
      } else if (node instanceof Node.Pump pump) {
        Supply boost = pump.boost();
        arcs.put(node.name(), places.arc(pump, boost::pressurePsi, boost.mostFlowGpm()));
      } else if (node instanceof Node.End end) {
        arcs.put(
            node.name(),
            Arc.of(places.in(end.name()), Arc.OUTSIDE, flow -> end.demand().needPsi(flow / ends)));
      }
    }
    return arcs;
  }

  /** Where the search begins: the pressures with nothing flowing. */
  private double[] closedPsi() {
    Map<String, Double> none = new HashMap<>();
    network.links().forEach(link -> none.put(link.name(), 0.0));
    double[] psi = new double[places.count()];
    new StateWriter(network, places, none, Map.of()).settle(psi);
    return psi;
  }
}
