package hosewright.fleet.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The product-limit estimate of survival from lives that enter late and are cut off.
 *
 * <p>At each age at which failures were found, those at risk are the sections that entered before
 * it and had not left before it; one cut off at that very age was still at risk. A failure counts
 * at the age it was found. The estimate is of outliving each age given life at the youngest entry.
 *
 * <p>Source: Kaplan and Meier, Journal of the American Statistical Association 53 (1958); the risk
 * set of late entries as in Klein and Moeschberger, Survival Analysis, 2nd ed. 2003, section 4.6.
 */
public final class KaplanMeier {
  private final List<Step> steps;
  private final double[] exits;

  private KaplanMeier(List<Step> steps, double[] exits) {
    this.steps = List.copyOf(steps);
    this.exits = exits;
  }

  /**
   * The survival from an age on.
   *
   * @param age years
   * @param atRisk sections at risk just before it
   * @param failures sections found failed at it
   * @param survival fraction that outlives it
   * @param standardError Greenwood's
   */
  public record Step(double age, int atRisk, int failures, double survival, double standardError) {}

  public static KaplanMeier of(List<Lifetime> lives) {
    double[] entries = lives.stream().mapToDouble(Lifetime::entry).sorted().toArray();
    double[] exits = lives.stream().mapToDouble(Lifetime::exit).sorted().toArray();
    double[] failures =
        lives.stream().filter(Lifetime::hasFailed).mapToDouble(Lifetime::failed).sorted().toArray();
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    double variance = 0;
    int i = 0;
    while (i < failures.length) {
      double age = failures[i];
      int found = 0;
      while (i < failures.length && failures[i] == age) {
        found++;
        i++;
      }
      int atRisk = below(entries, age) - below(exits, age);
      survival *= (double) (atRisk - found) / atRisk;
      variance += atRisk == found ? 0 : (double) found / ((double) atRisk * (atRisk - found));
      steps.add(new Step(age, atRisk, found, survival, survival * Math.sqrt(variance)));
    }
    return new KaplanMeier(steps, exits);
  }

  /** One step for each age at which failures were found, youngest first. */
  public List<Step> steps() {
    return steps;
  }

  /** The fraction that outlives an age, years. */
  public double survivalAt(double age) {
    double survival = 1;
    for (Step step : steps) {
      if (step.age() > age) {
        break;
      }
      survival = step.survival();
    }
    return survival;
  }

  /**
   * The most this curve and a law differ at any age with enough at risk: the Kolmogorov-Smirnov
   * distance. A curve of steps is farthest from a smooth one just before a step, at it, or at the
   * end (NIST/SEMATECH e-Handbook, 1.3.5.16).
   *
   * @param law the fraction that outlives an age, years
   * @return empty where no failure was found with enough at risk
   */
  Optional<Double> largestGap(DoubleUnaryOperator law, int enough) {
    double largest = 0;
    double before = 1;
    boolean found = false;
    for (Step step : steps) {
      if (step.atRisk() >= enough) {
        double there = law.applyAsDouble(step.age());
        largest = Math.max(largest, Math.abs(before - there));
        largest = Math.max(largest, Math.abs(step.survival() - there));
        found = true;
      }
      before = step.survival();
    }
    if (!found) {
      return Optional.empty();
    }
    double last = exits[exits.length - enough];
    return Optional.of(Math.max(largest, Math.abs(survivalAt(last) - law.applyAsDouble(last))));
  }

  private static int below(double[] sorted, double age) {
    int place = Arrays.binarySearch(sorted, age);
    if (place < 0) {
      return -place - 1;
    }
    while (place > 0 && sorted[place - 1] == age) {
      place--;
    }
    return place;
  }
}
