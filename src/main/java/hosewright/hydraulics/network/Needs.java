package hosewright.hydraulics.network;

import java.util.HashMap;
import java.util.Map;

/** What pressure each node needs for all that stands behind it, from the ends up. */
final class Needs {
  private final Network network;
  private final NetworkState state;

  Needs(Network network, NetworkState state) {
    this.network = network;
    this.state = state;
  }

  /** By node, psi; at a pump, at its intake. */
  Map<String, Double> psi() {
    Map<String, Double> needs = new HashMap<>();
    for (int i = network.nodes().size() - 1; i >= 0; i--) {
      Node node = network.nodes().get(i);
      if (node instanceof Node.End) {
        needs.put(node.name(), state.end(node.name()).needPsi());
        continue;
      }
      double need =
          network.outOf(node.name()).stream()
              .mapToDouble(link -> needs.get(link.ends()) + takesPsi(link))
              .max()
              .orElseThrow();
      if (node instanceof Node.Pump pump) {
        NetworkState.AtPump at = state.pump(node.name());
        double boostPsi = at.dischargePsi() - at.intakePsi();
        need = at.flowGpm() > 0 ? Math.max(pump.leastIntakePsi(), need - boostPsi) : need;
      }
      // A source that others outdo brings nothing, and what stands in it is as good as any.
      needs.put(node.name(), Double.isFinite(need) ? need : state.psi(node.name()));
    }
    return needs;
  }

  private double takesPsi(Link link) {
    NetworkState.InLink at = state.link(link.name());
    // Where no water comes this way, another brings it, and this one needs nothing for it.
    return at.flowGpm() > 0 ? at.beginsPsi() - at.endsPsi() : Double.NEGATIVE_INFINITY;
  }
}
