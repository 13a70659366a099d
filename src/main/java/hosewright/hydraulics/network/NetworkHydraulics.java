package hosewright.hydraulics.network;

import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The two questions about a network: what pressure the flows at its ends need at its sources, and
 * what flows its sources bring.
 */
public final class NetworkHydraulics {
  private NetworkHydraulics() {}

  /**
   * The pressure that flows need. Where lines meet again they share by equal loss; sources that
   * meet share by their curves, or, where a curve is missing, as if held at one pressure.
   *
   * @param flowGpm by end, for each of its copies, gpm, over 0
   * @throws BadInputException when an end has no flow, or a tip is larger than the hose before it
   */
  public static Required required(Network network, Map<String, Double> flowGpm) {
    refuseUnknown(network, flowGpm);
    refuseLargeTips(network);
    for (Node.End end : network.nodes(Node.End.class)) {
      double gpm = flowGpm.getOrDefault(end.name(), 0.0);
      Given.positive("flow of " + end.name(), gpm, Physical.MOST_FLOW_GPM, "gpm");
    }
    return new FlowsGiven(network, flowGpm).required();
  }

  /** What the sources bring with everything open. */
  public static NetworkState arriving(Network network) {
    return arriving(
        network,
        network.nodes(Node.End.class).stream()
            .collect(Collectors.toMap(Node.End::name, end -> network.copies(end.name()))));
  }

  /** What they bring to the others with one end shut, or one of its copies. */
  public static NetworkState oneShut(Network network, String end) {
    Map<String, Integer> open = new TreeMap<>();
    network.nodes(Node.End.class).forEach(one -> open.put(one.name(), network.copies(one.name())));
    open.merge(end, -1, Integer::sum);
    return arriving(network, open);
  }

  /** What they bring to one end with all others shut, its own copies too. */
  public static NetworkState alone(Network network, String end) {
    return arriving(network, Map.of(end, 1));
  }

  /** What everything stands under with all shut. */
  public static NetworkState allShut(Network network) {
    return arriving(network, Map.of());
  }

  /**
   * What the sources bring, to 0.01 gpm.
   *
   * @param open how many of an end's copies are open, by its name; none where it is not named
   * @throws BadInputException when a source's supply is not known, an end's name or count is no
   *     such thing, or a tip is larger than the hose before it
   */
  public static NetworkState arriving(Network network, Map<String, Integer> open) {
    refuseUnknown(network, open);
    refuseLargeTips(network);
    open.forEach(
        (end, count) -> Given.between("open of " + end, count, 0, network.copies(end), ""));
    for (Node.Source source : network.nodes(Node.Source.class)) {
      if (source.supply().isEmpty()) {
        throw new BadInputException("supply of " + source.name(), "", "say what it gives");
      }
    }
    return new FlowsSought(network, open).state();
  }

  private static void refuseUnknown(Network network, Map<String, ?> byEnd) {
    List<String> ends = network.nodes(Node.End.class).stream().map(Node.End::name).toList();
    List<Problem> problems =
        byEnd.keySet().stream()
            .filter(name -> !ends.contains(name))
            .sorted()
            .map(
                name ->
                    new Problem(
                        "end",
                        name,
                        "the ends of this layout are " + String.join(", ", ends),
                        Nearest.to(name, ends)))
            .toList();
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private static void refuseLargeTips(Network network) {
    for (Node.End end : network.nodes(Node.End.class)) {
      for (Link link : network.into(end.name())) {
        LineHydraulics.refuseTipLargerThanHose(link.elements(), end.demand());
      }
    }
  }
}
