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

/** No layout with a join costs less than the one that is planned, held against every one. */
class JoinBruteForceTest {

  @Test
  void two_unlike_legs_that_meet_before_a_third_in_6_small_random_shops() {
    holds(6, 150);
  }

  @Test
  @Tag("long")
  void two_unlike_legs_that_meet_before_a_third_in_200_small_random_shops() {
    holds(200, 5_000);
  }

  private static void holds(int wanted, int mostLayouts) {
    int shops = 0;
    int served = 0;
    long looked = 0;
    for (int seed = 0; shops < wanted; seed++) {
      RandomShop random = new RandomShop(new Random(seed));
      LayoutJob layout = random.joinJob().on(SmallShop.DATE);
      BruteJoins brute = new BruteJoins(layout, random.shop());
      Optional<Optional<Long>> found = brute.cheapest(mostLayouts);
      if (found.isPresent() && brute.looked() > 0) {
        assertThat(planned(layout, random.shop())).as("seed %d", seed).isEqualTo(found.get());
        shops++;
        served += found.get().isPresent() ? 1 : 0;
        looked += brute.looked();
      }
    }
    assertThat(served).isGreaterThan(wanted / 8);
    assertThat(looked).isGreaterThan(10L * wanted);
  }

  /** What a layout costs that is fed and passes and lacks nothing. */
  private static Optional<Long> planned(LayoutJob layout, SmallShop shop) {
    return new LayoutPlanner(layout, shop.shop())
        .find()
        .best()
        .filter(
            best ->
                best.checks().values().stream()
                    .flatMap(List::stream)
                    .noneMatch(check -> check.outcome() == Check.Outcome.FAIL))
        .filter(best -> best.bill().partsToSource() == 0)
        .map(best -> best.total().getAmountMinorLong());
  }
}
