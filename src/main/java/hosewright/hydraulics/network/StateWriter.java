package hosewright.hydraulics.network;

import hosewright.hydraulics.Supply;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes down what a network does, once its flows and pressures are found. */
final class StateWriter {
  /** Less is no flow, but what the balance leaves over. */
  private static final double NO_FLOW_GPM = 1e-4;

  private final Network network;
  private final Places places;
  private final Map<String, Double> flowGpm;
  private final Map<String, Integer> open;

  /**
   * @param flowGpm by link
   * @param open how many of an end's copies are open, by its name
   */
  StateWriter(
      Network network, Places places, Map<String, Double> flowGpm, Map<String, Integer> open) {
    this.network = network;
    this.places = places;
    this.flowGpm = new HashMap<>(flowGpm);
    this.flowGpm.replaceAll((link, gpm) -> gpm < NO_FLOW_GPM ? 0 : gpm);
    this.open = open;
  }

  /**
   * The state at these pressures.
   *
   * @param psi by place; changed where nothing flows
   */
  NetworkState state(double[] psi) {
    settle(psi);
    Map<String, Double> byName = new HashMap<>();
    network.nodes().forEach(node -> byName.put(node.name(), psi[places.in(node.name())]));
    return new NetworkState(
        byName,
        network.links().stream().map(link -> inLink(link, psi)).toList(),
        network.nodes(Node.Source.class).stream().map(source -> atSource(source, psi)).toList(),
        network.nodes(Node.Pump.class).stream().map(pump -> atPump(pump, psi)).toList(),
        network.nodes(Node.End.class).stream().map(end -> atEnd(end, psi)).toList());
  }

  /**
   * Where no water moves stands the highest pressure that reaches it: it came in, and no way leads
   * back.
   */
  void settle(double[] psi) {
    for (Node node : network.nodes()) {
      int in = places.in(node.name());
      List<Link> into = network.into(node.name());
      if (sum(into) > 0 || sum(network.outOf(node.name())) > 0) {
        continue;
      }
      if (node instanceof Node.Source source) {
        psi[in] = source.closedPsi();
        continue;
      }
      psi[in] =
          into.stream()
              .mapToDouble(link -> psi[places.out(link.begins())] - link.takesPsi(0))
              .max()
              .orElseThrow();
      if (node instanceof Node.Pump pump) {
        psi[places.out(node.name())] = psi[in] + pump.boost().closedPsi();
      }
    }
  }

  private double sum(List<Link> links) {
    return links.stream().mapToDouble(link -> flowGpm.get(link.name())).sum();
  }

  private NetworkState.InLink inLink(Link link, double[] psi) {
    double gpm = flowGpm.get(link.name());
    int copies = link.copies() == 1 ? 1 : Math.max(1, open.getOrDefault(link.ends(), 0));
    double oneLineGpm = gpm / copies / link.lines();
    return new NetworkState.InLink(
        link,
        gpm,
        oneLineGpm,
        psi[places.out(link.begins())],
        psi[places.in(link.ends())],
        link.losses(oneLineGpm));
  }

  private NetworkState.AtSource atSource(Node.Source source, double[] psi) {
    double gpm = sum(network.outOf(source.name()));
    boolean atItsMost = source.supply().map(supply -> atItsMost(supply, gpm)).orElse(false);
    return new NetworkState.AtSource(source, gpm, psi[places.out(source.name())], atItsMost);
  }

  private NetworkState.AtPump atPump(Node.Pump pump, double[] psi) {
    double gpm = sum(network.into(pump.name()));
    return new NetworkState.AtPump(
        pump,
        gpm,
        psi[places.in(pump.name())],
        psi[places.out(pump.name())],
        atItsMost(pump.boost(), gpm));
  }

  private static boolean atItsMost(Supply supply, double gpm) {
    return gpm >= supply.mostFlowGpm() - NO_FLOW_GPM;
  }

  private NetworkState.AtEnd atEnd(Node.End end, double[] psi) {
    int ends = open.getOrDefault(end.name(), 0);
    double oneGpm = ends == 0 ? 0 : sum(network.into(end.name())) / ends;
    return new NetworkState.AtEnd(
        end, ends, oneGpm, psi[places.in(end.name())], end.demand().needPsi(oneGpm));
  }
}
