package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Laws that hold for every layout, tried on seeded random ones; a failure names its seed. */
class NetworkPropertyTest {
  private static final int LAYOUTS = 300;

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
