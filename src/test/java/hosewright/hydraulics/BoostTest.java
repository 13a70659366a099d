package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of a pump on the way, over random pumps; a failure prints its seed. */
class BoostTest {
  private static final int SEEDS = 500;

  @Test
  void a_higher_churn_never_lowers_what_stands_behind_it_shut() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Boost boost = boost(random);
      Boost stronger =
          new Boost(
              boost.addsPsi(),
              boost.churnPsi() + random.nextInt(100),
              boost.leastIntakePsi(),
              boost.reliefPsi());
      double intakePsi = random.nextInt(150) - 10;
      assertThat(stronger.closedOutletPsi(intakePsi))
          .as("seed %d", seed)
          .isGreaterThanOrEqualTo(boost.closedOutletPsi(intakePsi));
    }
  }

  @Test
  void nothing_behind_it_stands_higher_than_its_relief_valve_is_set() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Boost boost = boost(random);
      double intakePsi = random.nextInt(300);
      assertThat(boost.outletPsi(intakePsi))
          .as("seed %d", seed)
          .isLessThanOrEqualTo(boost.reliefPsi());
      assertThat(boost.closedOutletPsi(intakePsi))
          .as("seed %d", seed)
          .isLessThanOrEqualTo(boost.reliefPsi());
    }
  }

  @Test
  void the_intake_that_a_need_takes_gives_it_and_keeps_its_floor() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Boost boost = boost(random);
      double needPsi = random.nextInt(250);
      double intakePsi = boost.neededIntakePsi(needPsi);
      assertThat(intakePsi).as("seed %d", seed).isGreaterThanOrEqualTo(boost.leastIntakePsi());
      if (!boost.relieves(needPsi)) {
        assertThat(boost.outletPsi(intakePsi)).as("seed %d", seed).isGreaterThan(needPsi - 1e-9);
      }
    }
  }

  @Test
  void what_lies_behind_it_holds_just_where_its_intake_may_stand_so_high() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Boost boost = boost(random);
      double bearsPsi = random.nextInt(300);
      double intakePsi = random.nextInt(300) + 0.5;
      assertThat(intakePsi <= boost.bearsAtIntakePsi(bearsPsi))
          .as("seed %d", seed)
          .isEqualTo(boost.closedOutletPsi(intakePsi) <= bearsPsi);
    }
  }

  /** Straight between the points of its curve: 166 psi at 600 gpm between 190 and 150 psi. */
  @Test
  void shut_it_adds_its_churn_and_flowing_what_its_curve_says() {
    PumpCurve curve =
        new PumpCurve(
            java.util.List.of(new PumpCurve.Point(0, 190), new PumpCurve.Point(1_000, 150)));

    Boost boost = Boost.of(curve, 600, 20, Double.POSITIVE_INFINITY);

    assertThat(boost.outletPsi(30)).isCloseTo(196, within(1e-9));
    assertThat(boost.closedOutletPsi(60)).isCloseTo(250, within(1e-9));
    assertThat(Boost.of(curve, 600, 20, 200).closedOutletPsi(60)).isCloseTo(200, within(1e-9));
  }

  private static Boost boost(Random random) {
    int churnPsi = 20 + random.nextInt(180);
    return new Boost(
        random.nextInt(churnPsi),
        churnPsi,
        random.nextInt(40) - 9,
        random.nextBoolean() ? Double.POSITIVE_INFINITY : 60 + random.nextInt(200));
  }
}
