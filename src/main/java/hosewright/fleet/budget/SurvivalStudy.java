package hosewright.fleet.budget;

import hosewright.fleet.budget.FleetBudget.Band;
import hosewright.fleet.budget.FleetBudget.Method;
import hosewright.fleet.budget.FleetBudget.Survival;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What the agency's own history says about how long its hose lasts. */
public record SurvivalStudy(
    List<Lifetime> lives, KaplanMeier productLimit, WeibullFit.Attempt attempt) {
  /** Below this many at risk the product limit is too rough to compare a law with. */
  private static final int ENOUGH_AT_RISK = 20;

  /** How the history is read; shown with every answer that rests on it. */
  public static final List<String> CONVENTIONS =
      List.of(
          "Time is age: from the day a section was made, else put in service.",
          "A section counts from the age of its first record on, so that hose which wore out before"
              + " the register began is not missed as if it had never been (left truncation).",
          "Leaving service by a rule of wear is a failure; the age limit, loss and withdrawal for"
              + " another reason only end what is known of a section (censoring).",
          "Hose repaired and passed again has not failed; hose taken out and not yet repaired has.",
          "A failure lies between the last passed test and the test that found it; the product"
              + " limit counts it at the age it was found.",
          "All hose of the fleet is taken to wear alike, whatever its size and jacket.",
          "The band is of "
              + FailureSimulation.RUNS
              + " simulated fleets, the law drawn anew for"
              + " each from the fit's uncertainty.");

  public static SurvivalStudy of(List<Lifetime> lives) {
    return new SurvivalStudy(lives, KaplanMeier.of(lives), WeibullFit.of(lives));
  }

  Survival answer(Optional<Method> method) {
    Optional<Weibull> law = Optional.ofNullable(attempt.fit()).map(WeibullFit::law);
    return new Survival(
        method,
        attempt.reason(),
        new Survival.History(lives.size(), lives.stream().filter(Lifetime::hasFailed).count()),
        new Survival.Law(
            law.map(Weibull::shape), law.map(Weibull::scaleYears), law.map(Weibull::medianYears)),
        productLimit.steps(),
        law.flatMap(this::largestGap),
        CONVENTIONS);
  }

  /** The product limit is given life at the youngest entry, so the law is taken so too. */
  private Optional<Double> largestGap(Weibull law) {
    double youngest = lives.stream().mapToDouble(Lifetime::entry).min().orElse(0);
    double given = law.survivalAt(youngest);
    return productLimit.largestGap(age -> law.survivalAt(age) / given, ENOUGH_AT_RISK);
  }

  /** The value that one in ten stays below, and the one that one in ten passes. */
  static Band[] band(int[] sections, Money[] costs) {
    Arrays.sort(sections);
    Arrays.sort(costs);
    int low = sections.length / 10;
    int high = sections.length - 1 - low;
    return new Band[] {new Band(sections[low], costs[low]), new Band(sections[high], costs[high])};
  }
}
