package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws that hold for every layout, tried on seeded random ones; a failure names its seed. */
class NetworkPropertyTest {
  private static final int LAYOUTS = 200;
  private static final int FEWER = 120;

  @Test
  void water_is_neither_made_nor_lost_and_every_figure_is_a_number() {
    forLayouts(
        LAYOUTS,
        network -> {
          NetworkState state = NetworkHydraulics.arriving(network);
          for (Node node : network.nodes()) {
            double comes = 0;
            for (Link link : network.into(node.name())) {
              comes += state.link(link.name()).flowGpm();
            }
            double goes = 0;
            for (Link link : network.outOf(node.name())) {
              goes += state.link(link.name()).flowGpm();
            }
            if (node instanceof Node.Junction || node instanceof Node.Pump) {
              assertThat(goes).isCloseTo(comes, within(0.001));
            }
            assertThat(state.psi(node.name())).isFinite();
          }
          for (NetworkState.AtEnd end : state.ends()) {
            assertThat(end.oneGpm()).isFinite().isNotNegative();
            if (end.flows()) {
              assertThat(end.psi()).isCloseTo(end.needPsi(), within(0.001));
            } else {
              assertThat(end.psi()).isLessThanOrEqualTo(end.needPsi() + 0.001);
            }
          }
        });
  }

  @Test
  void opening_one_more_end_never_raises_what_another_gets() {
    forLayouts(
        FEWER,
        network -> {
          if (network.nodes(Node.Source.class).size() > 1) {
            return; // two sources help each other, so more taken may open the second
          }
          NetworkState all = NetworkHydraulics.arriving(network);
          String shut = network.nodes(Node.End.class).get(0).name();
          NetworkState fewer = NetworkHydraulics.oneShut(network, shut);
          for (NetworkState.AtEnd end : all.ends()) {
            if (!end.end().name().equals(shut)) {
              assertThat(end.oneGpm())
                  .as(end.end().name())
                  .isLessThanOrEqualTo(fewer.end(end.end().name()).oneGpm() + 0.01);
            }
          }
        });
  }

  @Test
  void more_water_wanted_at_an_end_never_needs_less_pressure() {
    forLayouts(
        FEWER,
        network -> {
          Map<String, Double> wanted = wanted(network);
          double before = mostSourcePsi(NetworkHydraulics.required(network, wanted));
          String more = network.nodes(Node.End.class).get(0).name();
          wanted.merge(more, 1.2, (gpm, times) -> gpm * times);
          assertThat(mostSourcePsi(NetworkHydraulics.required(network, wanted)))
              .isGreaterThanOrEqualTo(before - 0.001);
        });
  }

  @Test
  void the_pressure_that_flows_need_gives_them_when_what_it_says_is_throttled() {
    forLayouts(
        FEWER,
        network -> {
          Map<String, Double> wanted = wanted(network);
          Required required = NetworkHydraulics.required(network, wanted);
          double least = Double.POSITIVE_INFINITY;
          for (NetworkState.AtEnd end : required.state().ends()) {
            assertThat(end.oneGpm()).isCloseTo(wanted.get(end.end().name()), within(0.001));
            double spare = end.psi() - end.needPsi();
            assertThat(spare).isGreaterThanOrEqualTo(-1e-6);
            least = Math.min(least, spare);
          }
          for (NetworkState.AtPump pump : required.state().pumps()) {
            assertThat(pump.shortOfIntakePsi()).isLessThan(1e-6);
            least = Math.min(least, pump.intakePsi() - pump.pump().leastIntakePsi());
          }
          assertThat(least).isCloseTo(0, within(1e-6));
          assertThat(required.throttlePsi().values()).allMatch(psi -> psi >= 0);
          if (!network.joins()) {
            throttledAwayAtEachEnd(network, required);
          }
        });
  }

  /** On the way to an end is throttled just what it has too much. */
  private static void throttledAwayAtEachEnd(Network network, Required required) {
    for (NetworkState.AtEnd end : required.state().ends()) {
      double throttled = 0;
      String at = end.end().name();
      while (!network.into(at).isEmpty()) {
        Link link = network.into(at).get(0);
        throttled += required.throttlePsi(link.name());
        at = link.begins();
      }
      assertThat(throttled).isCloseTo(end.psi() - end.needPsi(), within(1e-4));
    }
  }

  @Test
  void a_layout_moved_up_as_a_whole_stays_as_it_is() {
    forLayouts(
        FEWER / 2,
        network -> {
          List<Node> higher =
              network.nodes().stream()
                  .map(
                      node ->
                          node instanceof Node.Source source
                              ? new Node.Source(
                                  source.name(), source.heightFt() + 500, source.supply())
                              : node)
                  .toList();
          NetworkState there = NetworkHydraulics.arriving(new Network(higher, network.links()));
          for (NetworkState.AtEnd end : NetworkHydraulics.arriving(network).ends()) {
            assertThat(there.end(end.end().name()).oneGpm()).isCloseTo(end.oneGpm(), within(0.01));
          }
        });
  }

  /** Flows to each end, of a random size that its name and the layout decide. */
  private static Map<String, Double> wanted(Network network) {
    Random random = new Random(network.links().size());
    Map<String, Double> wanted = new HashMap<>();
    for (Node.End end : network.nodes(Node.End.class)) {
      wanted.put(end.name(), 20 + 200 * random.nextDouble());
    }
    return wanted;
  }

  private static double mostSourcePsi(Required required) {
    return required.state().sources().stream()
        .mapToDouble(NetworkState.AtSource::psi)
        .max()
        .orElseThrow();
  }

  private interface Property {
    void holdsFor(Network network);
  }

  private static void forLayouts(int count, Property property) {
    Map<Long, String> broken = new HashMap<>();
    for (long seed = 1; seed <= count; seed++) {
      try {
        property.holdsFor(RandomNetworks.of(seed));
      } catch (AssertionError | RuntimeException e) {
        broken.put(seed, e.toString());
      }
    }
    assertThat(broken).isEmpty();
  }
}
