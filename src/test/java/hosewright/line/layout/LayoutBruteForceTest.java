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

/** No layout costs less than the one that is planned, held against every layout there is. */
class LayoutBruteForceTest {

  @Test
  void two_unlike_legs_behind_a_third_in_40_small_random_shops() {
    holds(40, 600);
  }

  @Test
  @Tag("long")
  void two_unlike_legs_behind_a_third_in_500_small_random_shops() {
    holds(500, 20_000);
  }

  /** Its cheapest layouts take more of a hose than there is left. */
  @Test
  void a_layout_is_found_though_the_cheap_hose_has_run_out() {
    assertThat(judged(3_750, 20_000))
        .hasValueSatisfying(judged -> assertThat(judged.served).isTrue());
  }

  /** Hose that does not turn at either coupling is made up by an adapter with a swivel alone. */
  @Test
  void a_leg_whose_hose_cannot_be_turned_takes_the_dearer_bridge_with_a_swivel() {
    assertThat(judged(3_804, 20_000))
        .hasValueSatisfying(judged -> assertThat(judged.served).isTrue());
  }

  /** Its wye is rated less than what stands on it with nothing flowing. */
  @Test
  void no_layout_passes_whose_wye_would_be_overloaded() {
    assertThat(judged(6_585, 20_000))
        .hasValueSatisfying(judged -> assertThat(judged.served).isFalse());
  }

  private static void holds(int wanted, int mostLayouts) {
    int shops = 0;
    int served = 0;
    long looked = 0;
    for (int seed = 0; shops < wanted; seed++) {
      Optional<Judged> judged = judged(seed, mostLayouts);
      if (judged.isPresent()) {
        shops++;
        served += judged.get().served ? 1 : 0;
        looked += judged.get().looked;
      }
    }
    assertThat(served).isGreaterThan(wanted / 5);
    assertThat(looked).isGreaterThan(20L * wanted);
  }

  private record Judged(boolean served, int looked) {}

  /** The plan held against every layout; empty where there are none, or more than are looked at. */
  private static Optional<Judged> judged(int seed, int mostLayouts) {
    RandomShop random = new RandomShop(new Random(seed));
    LayoutJob layout = random.layoutJob().on(SmallShop.DATE);
    BruteLayouts brute = new BruteLayouts(layout, random.shop());
    Optional<Optional<Long>> found = brute.cheapest(mostLayouts);
    if (found.isEmpty() || brute.looked() == 0) {
      return Optional.empty();
    }
    assertThat(planned(layout, random.shop())).as("seed %d", seed).isEqualTo(found.get());
    return Optional.of(new Judged(found.get().isPresent(), brute.looked()));
  }

  /** What a layout costs that is fed and passes and lacks nothing. */
  private static Optional<Long> planned(LayoutJob layout, SmallShop shop) {
    return new LayoutPlanner(layout, shop.shop())
        .find()
        .best()
        .filter(LayoutBruteForceTest::passes)
        .filter(best -> best.bill().partsToSource() == 0)
        .map(best -> best.total().getAmountMinorLong());
  }

  private static boolean passes(FedLayout layout) {
    return layout.checks().values().stream()
        .flatMap(List::stream)
        .noneMatch(check -> check.outcome() == Check.Outcome.FAIL);
  }
}
