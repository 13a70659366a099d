package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class KaplanMeierTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  static Lifetime failedAt(double age) {
    return new Lifetime(0, age, age);
  }

  static Lifetime soundAt(double age) {
    return new Lifetime(0, age, NEVER);
  }

  /** Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.2.1.5, 20 units on life test. */
  @Test
  void the_life_test_of_the_nist_handbook_is_reproduced() {
    List<Lifetime> lives = new ArrayList<>();
    for (double hours : new double[] {10, 32, 56, 98, 122, 181}) {
      lives.add(failedAt(hours));
    }
    for (double hours : new double[] {50, 100, 125, 150}) {
      lives.add(soundAt(hours));
    }
    for (int i = 0; i < 10; i++) {
      lives.add(soundAt(200));
    }
    KaplanMeier estimate = KaplanMeier.of(lives);
    assertThat(estimate.survivalAt(10)).isCloseTo(19 / 20.0, within(1e-12));
    assertThat(estimate.survivalAt(32)).isCloseTo(19 / 20.0 * 18 / 19, within(1e-12));
    assertThat(estimate.survivalAt(56)).isCloseTo(19 / 20.0 * 18 / 19 * 16 / 17, within(1e-12));
    assertThat(estimate.steps())
        .extracting(KaplanMeier.Step::atRisk)
        .containsExactly(20, 19, 17, 16, 14, 11);
  }

  /**
   * Remission times under 6-mercaptopurine: Freireich et al., Blood 21 (1963), as printed in
   * Introductory Biostatistics, example 11.1. Survival worked out by SciPy 1.17.1,
   * scipy.stats.ecdf.
   */
  @Test
  void remission_times_of_1963_agree_with_a_general_library() {
    List<Lifetime> lives = new ArrayList<>();
    for (double weeks : new double[] {6, 6, 6, 7, 10, 13, 16, 22, 23}) {
      lives.add(failedAt(weeks));
    }
    for (double weeks : new double[] {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35}) {
      lives.add(soundAt(weeks));
    }
    assertThat(KaplanMeier.of(lives).steps())
        .extracting(KaplanMeier.Step::survival)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 5e-9 ? 0 : Double.compare(a, b))
        .containsExactly(
            0.85714286, 0.80672269, 0.75294118, 0.69019608, 0.62745098, 0.53781513, 0.44817927);
  }

  /**
   * Control arm of the same trial, no censoring: estimate 8/21 at 10 weeks with standard error
   * 0.106. Source: lecture notes on table 1.1 of Cox and Oakes, Analysis of Survival Data, 1984.
   */
  @Test
  void the_standard_error_is_the_published_one() {
    List<Lifetime> lives = new ArrayList<>();
    for (double weeks :
        new double[] {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23}) {
      lives.add(failedAt(weeks));
    }
    KaplanMeier.Step atEight =
        KaplanMeier.of(lives).steps().stream().filter(step -> step.age() == 8).findFirst().get();
    assertThat(atEight.survival()).isCloseTo(0.381, within(0.0005));
    assertThat(atEight.standardError()).isCloseTo(0.106, within(0.0005));
  }

  /**
   * Late entries: 80 policies at first, 20 leave and 4 enter before the first death; 2 leave and 3
   * enter before the second; 6 leave before the third. Source: Society of Actuaries, sample
   * question on the Kaplan-Meier estimate: risk sets 64, 64 and 57, estimate 0.951994.
   */
  @Test
  void sections_that_enter_late_count_only_from_then_on() {
    List<Lifetime> lives = new ArrayList<>();
    add(lives, 20, new Lifetime(0, 0.3, NEVER));
    add(lives, 4, new Lifetime(0.4, 3, NEVER));
    lives.add(failedAt(0.5));
    add(lives, 2, new Lifetime(0, 0.7, NEVER));
    add(lives, 3, new Lifetime(0.8, 3, NEVER));
    lives.add(failedAt(1));
    add(lives, 6, new Lifetime(0, 1.5, NEVER));
    lives.add(failedAt(1.8));
    add(lives, 80 - 20 - 3 - 2 - 6, new Lifetime(0, 3, NEVER));
    KaplanMeier estimate = KaplanMeier.of(lives);
    assertThat(estimate.steps()).extracting(KaplanMeier.Step::atRisk).containsExactly(64, 64, 57);
    assertThat(estimate.survivalAt(2)).isCloseTo(0.951994, within(5e-7));
  }

  @Test
  void a_life_cut_into_pieces_tells_the_same_as_the_whole() {
    for (long seed = 1; seed <= 50; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Lifetime> whole = new ArrayList<>();
      List<Lifetime> pieces = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        double exit = 1 + random.nextInt(30);
        Lifetime life = random.nextBoolean() ? failedAt(exit) : soundAt(exit);
        double cut = exit * random.nextDouble();
        whole.add(life);
        pieces.add(soundAt(cut));
        pieces.add(new Lifetime(cut, Math.max(cut, life.sound()), life.failed()));
      }
      assertThat(KaplanMeier.of(pieces).steps())
          .as("seed %d", seed)
          .isEqualTo(KaplanMeier.of(whole).steps());
    }
  }

  private static void add(List<Lifetime> lives, int count, Lifetime life) {
    for (int i = 0; i < count; i++) {
      lives.add(life);
    }
  }

  /**
   * NIST/SEMATECH e-Handbook, 1.3.5.16: the largest of F(Y) - (i-1)/N and i/N - F(Y) over the
   * ordered points, F the law's share that has failed. The late failures make it largest just
   * before the first step, 0.6 at the age of 3.
   */
  @Test
  void the_distance_to_a_law_is_taken_just_before_each_step_too() {
    double[] ages = {3, 3.5, 4, 4.5};
    List<Lifetime> lives = Arrays.stream(ages).mapToObj(age -> new Lifetime(0, age, age)).toList();
    double expected = 0;
    for (int i = 1; i <= ages.length; i++) {
      double share = ages[i - 1] / 5;
      expected = Math.max(expected, share - (i - 1.0) / ages.length);
      expected = Math.max(expected, (double) i / ages.length - share);
    }
    assertThat(KaplanMeier.of(lives).largestGap(age -> 1 - age / 5, 1).orElseThrow())
        .isCloseTo(expected, within(1e-12))
        .isCloseTo(0.6, within(1e-12));
  }

  @Test
  void the_distance_to_a_law_is_taken_after_the_last_step_up_to_the_last_age_seen() {
    List<Lifetime> lives =
        List.of(new Lifetime(0, 1, 1), new Lifetime(0, 4, Double.POSITIVE_INFINITY));
    // One of two fails at 1, where the law says 0.8; the other is sound at 4, where it says 0.05.
    assertThat(KaplanMeier.of(lives).largestGap(age -> age < 2 ? 0.8 : 0.05, 1).orElseThrow())
        .isCloseTo(0.45, within(1e-12));
  }
}
