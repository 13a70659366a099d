package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.job.Job;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Role;
import hosewright.line.plan.DemoCatalogue;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Plans of random tender jobs on the demo catalogue, held to the trade's rules from outside. */
final class PlansOfTheTradeTest {
  /** Nobody lays a fitting so that water runs faster: 400 gpm through 1.5 in is 73 ft/s. */
  private static final double MOST_FT_PER_S = 60;

  /** Of a gallon a minute through a bore of an inch: a gallon is 231 in³. */
  private static final double FT_PER_S_OF_A_GPM_IN_AN_INCH = 231 / 720.0 / (Math.PI / 4);

  private int feasible;
  private int fittings;
  private int unpriced;
  private double fastestFtPerS;

  @Test
  void no_plan_of_200_jobs_is_one_that_a_master_would_not_lay() {
    hold(200);
  }

  @Test
  @Tag("long")
  void no_plan_of_10000_jobs_is_one_that_a_master_would_not_lay() {
    hold(10_000);
  }

  private void hold(int wanted) {
    Shop shop =
        Shop.at(
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.get(),
            DemoCatalogue.DATE,
            CurrencyUnit.USD);
    int asked = 0;
    for (int seed = 0; feasible < wanted; seed++) {
      Job job = DemoCatalogue.job(RandomJobs.tenderAnswers(seed));
      Optional<Evaluated> best = passing(shop, shop.dated(job)).filter(Evaluated::passes);
      asked++;
      if (best.isPresent()) {
        feasible++;
        hold(shop, job, best.get(), seed);
      }
    }
    System.out.printf(
        "%d jobs asked, %d feasible: %d fittings, the fastest at %.1f ft/s, %d plans with a part"
            + " to source%n",
        asked, feasible, fittings, fastestFtPerS, unpriced);
    assertThat(fittings).isGreaterThan(wanted / 2);
  }

  /** Of jobs that nothing can do the nearest line is not looked for: it is no plan to hold. */
  private static Optional<Evaluated> passing(Shop shop, Job job) {
    return SearchResult.of(
            job,
            shop.catalogue(),
            shop.prices(),
            shop.currency(),
            SearchResult.Size::of,
            Search.Wanted.PASSING)
        .best();
  }

  private void hold(Shop shop, Job job, Evaluated plan, int seed) {
    assertThat(new PlainPractice(job).keeps(plan.assembly(), plan.purchases()))
        .as("seed %d: %s", seed, job)
        .isTrue();
    for (Placed part : plan.assembly().parts()) {
      if (part.role().isFitting()) {
        fittings++;
        double ftPerS = ftPerS(job, part);
        fastestFtPerS = Math.max(fastestFtPerS, ftPerS);
        assertThat(ftPerS).as("seed %d: %s", seed, part).isLessThanOrEqualTo(MOST_FT_PER_S);
      }
    }
    if (!plan.unpriced().isEmpty()) {
      unpriced++;
      // Each make on its own: none of them does it with every part priced.
      assertThat(shop.find(shop.dated(job), SearchResult.Make::of, 1).groups())
          .as("seed %d: %s", seed, job)
          .noneMatch(of -> of.get(0).passes() && of.get(0).unpriced().isEmpty());
    }
  }

  /** In the narrowest bore of a part, with its share of the flow. */
  private static double ftPerS(Job job, Placed part) {
    int beside = part.lines();
    if (part.role() == Role.SPLIT || part.role() == Role.JOIN) {
      boolean narrowIsOne =
          part.role() == Role.SPLIT
              ? part.upstream().orElseThrow().sizeIn() < part.downstream().orElseThrow().sizeIn()
              : part.downstream().orElseThrow().sizeIn() < part.upstream().orElseThrow().sizeIn();
      beside = narrowIsOne ? 1 : part.item().orElseThrow().ends().size() - 1;
    }
    double boreIn = part.waterwayIn();
    return FT_PER_S_OF_A_GPM_IN_AN_INCH * job.flowGpm() / beside / (boreIn * boreIn);
  }
}
