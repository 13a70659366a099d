package hosewright.hydraulics.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * By how much links are throttled, so that each end gets just its flow: each link by what all
 * behind it could spare, less what was throttled before it. Lines that meet again are not, or they
 * would no longer share as they do; what they could spare is throttled before they part or behind
 * where they meet.
 */
final class Throttling {
  /** Less is how exactly pressures are known. */
  private static final double NOTHING_PSI = 1e-5;

  private final Network network;
  private final NetworkState state;

  Throttling(Network network, NetworkState state) {
    this.network = network;
    this.state = state;
  }

  /** By link, psi. */
  Map<String, Double> psi() {
    Map<String, Double> throttled = new HashMap<>();
    Map<String, Double> before = new HashMap<>();
    for (Node node : network.nodes()) {
      before.putIfAbsent(node.name(), 0.0);
      for (Link link : network.outOf(node.name())) {
        double upToHere = before.get(node.name());
        double psi = feedsAlone(link) ? Math.max(0, sparePsi(link) - upToHere) : 0;
        throttled.put(link.name(), psi > NOTHING_PSI ? psi : 0);
        before.merge(link.ends(), upToHere + throttled.get(link.name()), Math::min);
      }
    }
    return throttled;
  }

  /** Whether all behind a link gets its water through it and no other way. */
  private boolean feedsAlone(Link link) {
    List<String> behind = network.behind(link.ends());
    return behind.stream()
        .flatMap(node -> network.into(node).stream())
        .allMatch(into -> into.equals(link) || behind.contains(into.begins()));
  }

  /** What all behind a link could do without, psi. */
  private double sparePsi(Link link) {
    return network.behind(link.ends()).stream().mapToDouble(this::sparePsi).min().orElseThrow();
  }

  private double sparePsi(String name) {
    Node node = network.node(name);
    if (node instanceof Node.End) {
      return state.psi(name) - state.end(name).needPsi();
    }
    return node instanceof Node.Pump pump
        ? state.psi(name) - pump.leastIntakePsi()
        : Double.POSITIVE_INFINITY;
  }
}
