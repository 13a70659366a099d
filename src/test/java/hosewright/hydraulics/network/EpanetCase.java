package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.network.NetworkState.InLink;
import hosewright.hydraulics.network.RandomNetworks.Drawn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One question about a random layout, as put to EPANET and as answered here.
 *
 * @param name the layout's seed and the question
 * @param drawn what is in the layout
 * @param text the layout as EPANET reads it
 * @param state our own answer
 */
record EpanetCase(String name, Drawn drawn, Network network, String text, NetworkState state) {
  /** What flows and pressures may differ by: so much of each, or of the least that counts. */
  private static final double SHARE = 0.005;

  /** Of the laws that EPANET knows with other constants: so much of the most in the layout. */
  private static final double SHARE_OF_OTHER_LAWS = 0.01;

  private static final double LEAST_GPM = 40;
  private static final double LEAST_PSI = 10;

  /**
   * Random layouts in which every source and pump stays on its curve, three questions in turn: all
   * open, one end shut, flows given. Two in three have hose by coefficient.
   */
  static List<EpanetCase> draw(int count) {
    List<EpanetCase> cases = new ArrayList<>();
    for (long seed = 1; cases.size() < count; seed++) {
      Drawn drawn =
          switch (cases.size() % 6) {
            case 1 -> Drawn.WITH_HAZEN_WILLIAMS;
            case 4 -> Drawn.WITH_DARCY_WEISBACH;
            default -> Drawn.BY_COEFFICIENT;
          };
      Network network = RandomNetworks.of(seed, drawn);
      NetworkState open = NetworkHydraulics.arriving(network);
      if (network.links().size() < 4 || !onItsCurves(open)) {
        continue;
      }
      EpanetCase one =
          switch (cases.size() / 6 % 4) {
            case 1 -> oneShut(seed, drawn, network);
            case 2 -> given(seed, drawn, network, open);
            default -> allOpen(seed, drawn, network);
          };
      if (onItsCurves(one.state())) {
        cases.add(one);
      }
    }
    return cases;
  }

  private static boolean onItsCurves(NetworkState state) {
    return state.sources().stream().noneMatch(NetworkState.AtSource::atItsMost)
        && state.pumps().stream().noneMatch(NetworkState.AtPump::atItsMost)
        && state.ends().stream().allMatch(end -> end.open() == 0 || end.oneGpm() > 1);
  }

  private static EpanetCase allOpen(long seed, Drawn drawn, Network network) {
    Map<String, Integer> open = new HashMap<>();
    network.nodes(Node.End.class).forEach(end -> open.put(end.name(), network.copies(end.name())));
    return new EpanetCase(
        seed + " all open",
        drawn,
        network,
        EpanetFile.sought(network, drawn, open),
        NetworkHydraulics.arriving(network, open));
  }

  private static EpanetCase oneShut(long seed, Drawn drawn, Network network) {
    Map<String, Integer> open = new HashMap<>();
    network.nodes(Node.End.class).forEach(end -> open.put(end.name(), network.copies(end.name())));
    open.merge(network.nodes(Node.End.class).get(0).name(), -1, Integer::sum);
    return new EpanetCase(
        seed + " one shut",
        drawn,
        network,
        EpanetFile.sought(network, drawn, open),
        NetworkHydraulics.arriving(network, open));
  }

  /** Asks what the flows need that do arrive, each a tenth less than the one before. */
  private static EpanetCase given(long seed, Drawn drawn, Network network, NetworkState arriving) {
    Map<String, Double> wanted = new HashMap<>();
    double share = 1;
    for (NetworkState.AtEnd end : arriving.ends()) {
      wanted.put(end.end().name(), end.oneGpm() * share);
      share = Math.max(0.5, share - 0.1);
    }
    Required required = NetworkHydraulics.required(network, wanted);
    return new EpanetCase(
        seed + " flows given",
        drawn,
        network,
        EpanetFile.given(network, drawn, required, wanted),
        required.state());
  }

  /**
   * Holds our answer to EPANET's, where water moves.
   *
   * <p>Of hose by coefficient every figure is held to its own size. The two other laws EPANET knows
   * with constants and exponents rounded otherwise, and Colebrook's factor by a formula near it.
   * They are given a hundredth, and since little may be left of much pressure after much loss, a
   * hundredth of all the pressure that sources and pumps bring.
   *
   * @param answers heads in feet and flows in gpm by EPANET's names
   */
  void agreesWith(Map<String, Double> answers) {
    double leastPsi = drawn == Drawn.BY_COEFFICIENT ? LEAST_PSI : allPsi();
    double leastGpm =
        drawn == Drawn.BY_COEFFICIENT
            ? LEAST_GPM
            : state.links().stream().mapToDouble(InLink::flowGpm).max().orElse(0);
    Map<String, Double> heightsFt = network.heightsFt();
    for (int i = 0; i < network.nodes().size(); i++) {
      Node node = network.nodes().get(i);
      if (!moves(node.name())) {
        continue;
      }
      double heightFt = heightsFt.get(node.name());
      double psi = (answers.get("N" + i) - heightFt) * Physical.PSI_PER_FT;
      same(node.name() + " psi", state.psi(node.name()), psi, leastPsi);
      if (node instanceof Node.Pump) {
        double outPsi = (answers.get("N" + i + "d") - heightFt) * Physical.PSI_PER_FT;
        same(node.name() + " discharge", state.pump(node.name()).dischargePsi(), outPsi, leastPsi);
      }
    }
    for (int i = 0; i < network.links().size(); i++) {
      String lines = "L" + i + ".";
      double gpm =
          answers.entrySet().stream()
              .filter(answer -> answer.getKey().startsWith(lines))
              .mapToDouble(Map.Entry::getValue)
              .sum();
      String name = network.links().get(i).name();
      same(name + " gpm", state.link(name).flowGpm(), gpm, leastGpm);
    }
  }

  private double allPsi() {
    double sources = state.sources().stream().mapToDouble(at -> at.psi()).max().orElse(0);
    return sources
        + state.pumps().stream().mapToDouble(at -> at.dischargePsi() - at.intakePsi()).sum();
  }

  private boolean moves(String node) {
    return state.links().stream()
        .filter(at -> at.link().begins().equals(node) || at.link().ends().equals(node))
        .anyMatch(at -> at.flowGpm() > 1);
  }

  private void same(String what, double ours, double epanets, double least) {
    double share = drawn == Drawn.BY_COEFFICIENT ? SHARE : SHARE_OF_OTHER_LAWS;
    assertThat(ours)
        .as("%s, %s, %s", name, drawn, what)
        .isCloseTo(epanets, within(share * Math.max(least, Math.abs(epanets))));
  }
}
