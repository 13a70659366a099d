package hosewright.hydraulics.network;

import java.util.Map;

/**
 * What it takes to give every end of a network its flow.
 *
 * @param state the network with its sources at the pressure needed and nothing throttled: some end
 *     or some pump's intake has just what it needs, all others as much or more
 * @param needPsi by node: pressure there that all behind it need; at a pump, at its intake
 * @param throttlePsi by link: what must be throttled at its beginning, so that what stands behind
 *     it gets just its flow; throttling is done once, nearest to the source
 */
public record Required(
    NetworkState state, Map<String, Double> needPsi, Map<String, Double> throttlePsi) {

  public Required {
    needPsi = Map.copyOf(needPsi);
    throttlePsi = Map.copyOf(throttlePsi);
  }

  /** Pressure a source has to hold, psi; 0 or below where a fall alone brings more than enough. */
  public double sourcePsi(String source) {
    return state.source(source).psi();
  }

  /** Pressure at a node that all behind it need, psi. */
  public double needPsi(String node) {
    return needPsi.get(node);
  }

  /** What a link must be throttled by, psi. */
  public double throttlePsi(String link) {
    return throttlePsi.get(link);
  }
}
