package hosewright.hydraulics.network;

import hosewright.hydraulics.Losses;
import hosewright.hydraulics.Station;
import java.util.List;
import java.util.Map;

/**
 * What the water does in a network: pressure at each node, flow in each link.
 *
 * @param psi pressure by node, psi; at a pump that of its intake
 * @param links what each link carries, in the network's order
 * @param sources what each source gives
 * @param pumps what each pump does
 * @param ends what comes out
 */
public record NetworkState(
    Map<String, Double> psi,
    List<InLink> links,
    List<AtSource> sources,
    List<AtPump> pumps,
    List<AtEnd> ends) {

  public NetworkState {
    psi = Map.copyOf(psi);
    links = List.copyOf(links);
    sources = List.copyOf(sources);
    pumps = List.copyOf(pumps);
    ends = List.copyOf(ends);
  }

  /** Pressure at a node, psi; at a pump that of its intake. */
  public double psi(String node) {
    return psi.get(node);
  }

  public InLink link(String name) {
    return links.stream().filter(at -> at.link().name().equals(name)).findFirst().orElseThrow();
  }

  public AtSource source(String name) {
    return sources.stream().filter(at -> at.source().name().equals(name)).findFirst().orElseThrow();
  }

  public AtPump pump(String name) {
    return pumps.stream().filter(at -> at.pump().name().equals(name)).findFirst().orElseThrow();
  }

  public AtEnd end(String name) {
    return ends.stream().filter(at -> at.end().name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * One link at its flow.
   *
   * @param flowGpm in all its lines and copies together
   * @param oneLineGpm in each line
   * @param beginsPsi pressure at its beginning; behind a pump its discharge pressure
   * @param endsPsi pressure at its end
   * @param losses of one line
   */
  public record InLink(
      Link link,
      double flowGpm,
      double oneLineGpm,
      double beginsPsi,
      double endsPsi,
      Losses losses) {

    /**
     * Pressure and height along one line of it.
     *
     * @param closedPsi pressure at its beginning with everything shut, psi
     */
    public List<Station> profile(double closedPsi) {
      return link.profile(oneLineGpm, beginsPsi, closedPsi);
    }
  }

  /**
   * A source at its flow.
   *
   * @param flowGpm through all its outlets
   * @param psi pressure it holds, or has to hold
   * @param atItsMost whether it is known only up to this flow, and more would be taken
   */
  public record AtSource(Node.Source source, double flowGpm, double psi, boolean atItsMost) {}

  /**
   * A pump at its flow.
   *
   * @param flowGpm 0 where it cannot lift the water to any end
   * @param atItsMost whether it is known only up to this flow, and more would be taken
   */
  public record AtPump(
      Node.Pump pump, double flowGpm, double intakePsi, double dischargePsi, boolean atItsMost) {

    /** How far the intake pressure is below what it must keep, psi; 0 where it is not. */
    public double shortOfIntakePsi() {
      return flowGpm > 0 ? Math.max(0, pump.leastIntakePsi() - intakePsi) : 0;
    }
  }

  /**
   * An end at its flow.
   *
   * @param open how many of its like ends are open
   * @param oneGpm flow of each that is open; 0 where no water reaches it
   * @param psi pressure at it
   * @param needPsi pressure it takes to pass that flow
   */
  public record AtEnd(Node.End end, int open, double oneGpm, double psi, double needPsi) {

    /** Whether it is open and water comes out. */
    public boolean flows() {
      return oneGpm > 0;
    }

    /** Flow of all that are open, gpm. */
    public double flowGpm() {
      return oneGpm * open;
    }
  }
}
