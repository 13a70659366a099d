package hosewright.fleet.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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

  private KaplanMeier(List<Step> steps) {
    this.steps = List.copyOf(steps);
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
    return new KaplanMeier(steps);
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
