package hosewright.fleet.budget;

import static hosewright.fleet.budget.KaplanMeierTest.failedAt;
import static hosewright.fleet.budget.KaplanMeierTest.soundAt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class WeibullFitTest {

  /** Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: 606.5280, 1.7208, 75.135. */
  @Test
  void the_weibull_fit_of_the_nist_handbook_is_reproduced() {
    List<Lifetime> lives = new ArrayList<>();
    for (double hours : new double[] {54, 187, 216, 240, 244, 335, 361, 373, 375, 386}) {
      lives.add(failedAt(hours));
    }
    for (int i = 0; i < 10; i++) {
      lives.add(soundAt(500));
    }
    WeibullFit fit = WeibullFit.of(lives).fit();
    assertThat(fit.law().scaleYears()).isCloseTo(606.5280, within(0.01));
    assertThat(fit.law().shape()).isCloseTo(1.7208, within(0.0001));
    assertThat(fit.logLikelihood()).isCloseTo(-75.135, within(0.001));
  }

  /**
   * Fans of 70 diesel engines, thousands of hours: Nelson, Applied Life Data Analysis, 1982, p.
   * 318; shape 1.0584 and scale 26.2968 as printed in the SAS/QC 9.22 User's Guide, chapter
   * Reliability, and checked in the tests of SciPy.
   */
  @Test
  void nelsons_fans_give_the_published_law() {
    double[] failed = {0.45, 1.15, 1.15, 1.6, 2.07, 2.07, 2.08, 3.1, 3.45, 4.6, 6.1, 8.75};
    double[] sound = {
      0.46, 1.56, 1.66, 1.85, 1.85, 1.85, 1.85, 1.85, 2.03, 2.03, 2.03, 2.2, 3, 3, 3, 3, 3.2, 3.75,
      3.75, 4.15, 4.15, 4.15, 4.15, 4.3, 4.3, 4.3, 4.3, 4.85, 4.85, 4.85, 4.85, 5, 5, 5, 6.1, 6.1,
      6.1, 6.3, 6.45, 6.45, 6.7, 7.45, 7.8, 7.8, 8.1, 8.1, 8.2, 8.5, 8.5, 8.5, 8.75, 8.75, 9.4, 9.9,
      10.1, 10.1, 10.1, 11.5
    };
    assertThat(failed.length + sound.length).isEqualTo(70);
    List<Lifetime> lives = new ArrayList<>();
    for (double hours : failed) {
      lives.add(failedAt(hours));
    }
    for (double hours : sound) {
      lives.add(soundAt(hours));
    }
    Weibull law = WeibullFit.of(lives).fit().law();
    assertThat(law.shape()).isCloseTo(1.0584, within(0.0002));
    assertThat(law.scaleYears()).isCloseTo(26.2968, within(0.002));
  }

  /**
   * Cracks found at inspections of 167 turbine parts: Nelson, Applied Life Data Analysis, 1982, p.
   * 415. Shape and scale worked out by SciPy 1.17.1, weibull_min.fit on interval-censored data.
   */
  @Test
  void failures_between_two_inspections_agree_with_a_general_library() {
    Weibull law = WeibullFit.of(turbineParts()).fit().law();
    assertThat(law.shape()).isCloseTo(1.485367, within(2e-5));
    assertThat(law.scaleYears()).isCloseTo(71.690405, within(1e-3));
  }

  private static List<Lifetime> turbineParts() {
    double[][] months = {
      {0, 6.12, 5}, {6.12, 19.92, 16}, {19.92, 29.64, 12}, {29.64, 35.40, 18},
      {35.40, 39.72, 18}, {39.72, 45.24, 2}, {45.24, 52.32, 6}, {52.32, 63.48, 17}
    };
    List<Lifetime> lives = new ArrayList<>();
    for (double[] row : months) {
      for (int i = 0; i < row[2]; i++) {
        lives.add(new Lifetime(0, row[0], row[1]));
      }
    }
    for (int i = 0; i < 73; i++) {
      lives.add(soundAt(63.48));
    }
    return lives;
  }

  /**
   * Times between particles, 200 of them: Meeker and Escobar, Statistical Methods for Reliability
   * Data, 1998, example 7.1. With shape 1 the likelihood is greatest at 572.3, and 95 % likelihood
   * limits are 498 and 662.
   */
  @Test
  void the_interval_likelihood_is_the_published_one() {
    double[][] rows = {
      {0, 100, 41},
      {100, 300, 44},
      {300, 500, 24},
      {500, 700, 32},
      {700, 1000, 29},
      {1000, 2000, 21},
      {2000, 4000, 9}
    };
    List<Lifetime> lives = new ArrayList<>();
    for (double[] row : rows) {
      for (int i = 0; i < row[2]; i++) {
        lives.add(new Lifetime(0, row[0], row[1]));
      }
    }
    double top = WeibullFit.logLikelihood(lives, new Weibull(1, 572.3));
    assertThat(WeibullFit.logLikelihood(lives, new Weibull(1, 571.3))).isLessThan(top);
    assertThat(WeibullFit.logLikelihood(lives, new Weibull(1, 573.3))).isLessThan(top);
    // 3.841 is the 0.95 quantile of chi-square with one degree of freedom, NIST e-Handbook
    // 1.3.6.7.4.
    for (double limit : new double[] {498, 662}) {
      double inside =
          2
              * (top
                  - WeibullFit.logLikelihood(
                      lives, new Weibull(1, limit + (limit < 572 ? 0.5 : -0.5))));
      double outside =
          2
              * (top
                  - WeibullFit.logLikelihood(
                      lives, new Weibull(1, limit + (limit < 572 ? -0.5 : 0.5))));
      assertThat(inside).isLessThan(3.841);
      assertThat(outside).isGreaterThan(3.841);
    }
  }

  @Test
  void hose_that_enters_late_and_is_tested_yearly_gives_its_own_law_back() {
    Weibull truth = new Weibull(3, 14);
    int within = 0;
    for (long seed = 1; seed <= 20; seed++) {
      WeibullFit fit = WeibullFit.of(invented(truth, 600, new SplittableRandom(seed))).fit();
      boolean shapeIn =
          Math.abs(Math.log(fit.law().shape() / truth.shape())) < 2 * fit.logShapeError();
      boolean scaleIn =
          Math.abs(Math.log(fit.law().scaleYears() / truth.scaleYears())) < 2 * fit.logScaleError();
      within += shapeIn && scaleIn ? 1 : 0;
    }
    // Two standard errors hold 95 of 100 each; fewer than 15 of 20 would come once in thousands.
    assertThat(within).isGreaterThanOrEqualTo(15);
  }

  @Test
  void forgetting_that_hose_entered_late_would_make_it_look_longer_lived() {
    Weibull truth = new Weibull(3, 14);
    List<Lifetime> late = invented(truth, 1_000, new SplittableRandom(7));
    List<Lifetime> forgotten =
        late.stream().map(life -> new Lifetime(0, life.sound(), life.failed())).toList();
    assertThat(WeibullFit.of(forgotten).fit().law().medianYears())
        .isGreaterThan(WeibullFit.of(late).fit().law().medianYears());
  }

  /** Sections first seen at any age up to 15, tested each year since, for eight years. */
  private static List<Lifetime> invented(Weibull law, int count, SplittableRandom random) {
    List<Lifetime> lives = new ArrayList<>();
    while (lives.size() < count) {
      double entry = 15 * random.nextDouble();
      double dies =
          law.scaleYears() * Math.pow(-Math.log(1 - random.nextDouble()), 1 / law.shape());
      if (dies <= entry) {
        continue;
      }
      double passed = entry;
      for (int year = 1; year <= 8 && entry + year < dies; year++) {
        passed = entry + year;
      }
      boolean found = dies <= entry + 8;
      if (found || passed > entry) {
        lives.add(new Lifetime(entry, passed, found ? passed + 1 : Double.POSITIVE_INFINITY));
      }
    }
    return lives;
  }

  @Test
  void too_few_failures_are_said_and_not_fitted() {
    List<Lifetime> lives = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      lives.add(failedAt(i));
    }
    WeibullFit.Attempt attempt = WeibullFit.of(lives);
    assertThat(attempt.suffices()).isFalse();
    assertThat(attempt.reason()).contains("9 failures").contains("needs 10");
  }

  @Test
  void failures_that_fix_no_law_are_said() {
    List<Lifetime> lives = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      lives.add(new Lifetime(0, 0, 10 + i % 3));
    }
    WeibullFit.Attempt attempt = WeibullFit.of(lives);
    assertThat(attempt.suffices()).isFalse();
    assertThat(attempt.reason()).isNotEmpty();
  }
}
