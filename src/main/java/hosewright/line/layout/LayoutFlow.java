package hosewright.line.layout;

import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.network.Network;
import hosewright.hydraulics.network.NetworkHydraulics;
import hosewright.hydraulics.network.NetworkState;
import hosewright.job.layout.LayoutJob;
import hosewright.line.layout.search.Divider;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a source brings through a layout with everything open.
 *
 * @param flowGpm that leaves the source, gpm
 * @param sourcePsi what it gives at that flow, psi
 * @param appliances in the order water meets them
 * @param pumps on the way, likewise
 */
public record LayoutFlow(
    double flowGpm, double sourcePsi, List<AtAppliance> appliances, List<AtPump> pumps) {
  private static final double HAIR_PSI = 0.01;

  /** So near is a pump held to its relief setting. */
  private static final double CLOSE_PSI = 1e-3;

  public LayoutFlow {
    appliances = List.copyOf(appliances);
    pumps = List.copyOf(pumps);
    // Open water gives nothing, and no less.
    sourcePsi = sourcePsi == 0 ? 0 : sourcePsi;
  }

  /**
   * An appliance.
   *
   * @param copies how many like it there are
   * @param flowGpm of each, gpm
   * @param deliveredPsi pressure there, psi
   * @param aloneGpm its flow with all others shut, gpm
   * @param alonePsi pressure there then, psi
   */
  public record AtAppliance(
      String leg,
      int copies,
      double flowGpm,
      double deliveredPsi,
      double aloneGpm,
      double alonePsi) {}

  /**
   * A pump on the way.
   *
   * @param relieved whether its relief valve holds it back
   * @param shortOfIntakePsi by how much its intake falls below what it must keep, psi
   * @param atItsMost whether more would flow than its curve is known for
   */
  public record AtPump(
      String pump,
      double flowGpm,
      double intakePsi,
      double dischargePsi,
      boolean relieved,
      double shortOfIntakePsi,
      boolean atItsMost) {}

  /** Whether every pump keeps its intake, and water comes to every appliance. */
  public boolean holds() {
    return pumps.stream().noneMatch(pump -> pump.shortOfIntakePsi() > HAIR_PSI)
        && appliances.stream().allMatch(one -> one.flowGpm() > 0);
  }

  /**
   * What flows.
   *
   * @param layout one whose source is stated
   * @param strainer what the water passes first where it is drawn
   */
  public static LayoutFlow of(LayoutJob layout, FedLayout fed, Optional<LineElement> strainer) {
    Sought sought = new Sought(layout, fed, strainer);
    Settled open = sought.settled(Optional.empty());
    List<AtAppliance> appliances = new ArrayList<>();
    List<AtPump> pumps = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      String end = leg.together();
      if (leg.laid().asked().last()
          && appliances.stream().noneMatch(one -> one.leg().equals(end))) {
        NetworkState.AtEnd at = open.state.end(end);
        NetworkState.AtEnd alone = sought.settled(Optional.of(end)).state.end(end);
        appliances.add(
            new AtAppliance(
                end,
                leg.laid().asked().copies(),
                at.oneGpm(),
                at.psi(),
                alone.oneGpm(),
                alone.psi()));
      }
      leg.laid()
          .divider()
          .flatMap(Divider::pump)
          .ifPresent(pump -> pumps.add(open.at(pump.name(), leg.name())));
    }
    NetworkState.AtSource source = open.state.sources().get(0);
    return new LayoutFlow(source.flowGpm(), source.psi(), appliances, pumps);
  }

  /**
   * What flows with relief valves at work.
   *
   * @param heldPsi by how much each pump is held back, psi, by the leg before it
   */
  private record Settled(NetworkState state, Map<String, Double> heldPsi) {

    AtPump at(String name, String leg) {
      NetworkState.AtPump pump = state.pump(leg);
      return new AtPump(
          name,
          pump.flowGpm(),
          pump.intakePsi(),
          pump.dischargePsi(),
          heldPsi.getOrDefault(leg, 0.0) > 0,
          pump.shortOfIntakePsi(),
          pump.atItsMost());
    }
  }

  /** What is sought, with everything open or one appliance alone. */
  private record Sought(LayoutJob layout, FedLayout fed, Optional<LineElement> strainer) {

    /** Holds each pump back in turn, from the source on, to what its relief valve lets stand. */
    Settled settled(Optional<String> alone) {
      Map<String, Double> heldPsi = new HashMap<>();
      for (FedLeg leg : fed.legs()) {
        leg.laid()
            .divider()
            .flatMap(Divider::pump)
            .filter(pump -> Double.isFinite(pump.boost().reliefPsi()))
            .ifPresent(pump -> heldPsi.put(leg.name(), held(leg.name(), pump, heldPsi, alone)));
      }
      return new Settled(state(heldPsi, alone), heldPsi);
    }

    private double held(
        String leg, Divider.Pump pump, Map<String, Double> others, Optional<String> alone) {
      double reliefPsi = pump.boost().reliefPsi();
      double lowPsi = 0;
      double highPsi = pump.curve().closedPsi();
      Map<String, Double> so = new HashMap<>(others);
      so.put(leg, lowPsi);
      if (state(so, alone).pump(leg).dischargePsi() <= reliefPsi) {
        return 0;
      }
      while (highPsi - lowPsi > CLOSE_PSI) {
        double middlePsi = (lowPsi + highPsi) / 2;
        so.put(leg, middlePsi);
        if (state(so, alone).pump(leg).dischargePsi() > reliefPsi) {
          lowPsi = middlePsi;
        } else {
          highPsi = middlePsi;
        }
      }
      return highPsi;
    }

    private NetworkState state(Map<String, Double> heldPsi, Optional<String> alone) {
      Network network = new LayoutNetwork(layout, fed, strainer, heldPsi).network();
      return alone
          .map(end -> NetworkHydraulics.alone(network, end))
          .orElseGet(() -> NetworkHydraulics.arriving(network));
    }
  }
}
