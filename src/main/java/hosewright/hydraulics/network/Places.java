package hosewright.hydraulics.network;

import hosewright.hydraulics.Supply;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * The places of a network by number: one for each node, and a second for what a pump discharges.
 */
final class Places {
  private final Map<String, Integer> whereLinksEnd = new HashMap<>();
  private final Map<String, Integer> whereLinksBegin = new HashMap<>();
  private int count;

  Places(Network network) {
    for (Node node : network.nodes()) {
      whereLinksEnd.put(node.name(), count);
      whereLinksBegin.put(node.name(), node instanceof Node.Pump ? ++count : count);
      count++;
    }
  }

  int count() {
    return count;
  }

  /** Where links that end at a node bring water to. */
  int in(String node) {
    return whereLinksEnd.get(node);
  }

  /** Where links that begin at a node take it from. */
  int out(String node) {
    return whereLinksBegin.get(node);
  }

  /** A link of which so many copies are open. */
  Arc arc(Link link, int copies) {
    double together = (double) copies * link.lines();
    return Arc.of(
        out(link.begins()), in(link.ends()), flowGpm -> link.takesPsi(flowGpm / together));
  }

  /** From a pump's intake to its discharge. */
  Arc arc(Node.Pump pump, DoubleUnaryOperator boostPsi, double mostGpm) {
    return new Arc(
        in(pump.name()), out(pump.name()), flow -> -boostPsi.applyAsDouble(flow), mostGpm);
  }

  /** From outside to a source's outlets. */
  Arc arc(Node.Source source, DoubleUnaryOperator psi, double mostGpm) {
    return new Arc(Arc.OUTSIDE, out(source.name()), flow -> -psi.applyAsDouble(flow), mostGpm);
  }

  /** A curve that goes on falling beyond the flow it is known to. */
  static DoubleUnaryOperator goingOn(Supply supply) {
    double mostGpm = supply.mostFlowGpm();
    return flow ->
        flow <= mostGpm ? supply.pressurePsi(flow) : supply.pressurePsi(mostGpm) - (flow - mostGpm);
  }
}
