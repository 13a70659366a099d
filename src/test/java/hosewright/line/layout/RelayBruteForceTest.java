package hosewright.line.layout;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.job.layout.LayoutJob;
import hosewright.line.model.Check;
import hosewright.line.search.RandomShop;
import hosewright.line.search.SmallShop;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No layout with a pump on the way costs less than the one that is planned. */
class RelayBruteForceTest {

  @Test
  void lines_behind_a_relay_pump_in_8_small_random_shops() {
    holds(8, 100);
  }

  @Test
  @Tag("long")
  void lines_behind_a_relay_pump_in_500_small_random_shops() {
    holds(500, 20_000);
  }

  private static void holds(int wanted, int mostLayouts) {
    int shops = 0;
    int served = 0;
    int unserved = 0;
    for (int seed = 0; shops < wanted; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      LayoutJob layout = random.relayJob().on(SmallShop.DATE);
      BruteRelays brute = new BruteRelays(layout, random.shop());
      Optional<Optional<Long>> found = brute.cheapest(mostLayouts);
      if (found.isPresent() && brute.looked() > 0) {
        assertThat(planned(layout, random.shop())).as("seed %d", seed).isEqualTo(found.get());
        shops++;
        served += found.get().isPresent() ? 1 : 0;
        unserved += found.get().isPresent() ? 0 : 1;
      }
    }
    assertThat(served).isGreaterThan(wanted / 5);
    assertThat(unserved).isGreaterThan(wanted / 10);
  }

  /** What a layout costs that is fed and passes and lacks nothing. */
  private static Optional<Long> planned(LayoutJob layout, SmallShop shop) {
    return new LayoutPlanner(layout, shop.shop())
        .find()
        .best()
        .filter(RelayBruteForceTest::passes)
        .filter(best -> best.bill().partsToSource() == 0)
        .map(best -> best.total().getAmountMinorLong());
  }

  private static boolean passes(FedLayout layout) {
    return layout.checks().values().stream()
        .flatMap(List::stream)
        .noneMatch(check -> check.outcome() == Check.Outcome.FAIL);
  }
}
