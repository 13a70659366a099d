package hosewright.hydraulics.suction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DraftingTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  /**
   * National Wildfire Coordinating Group, Firefighter Math, 3.5 Drafting Guidelines: 14.7 psi hold
   * 33.9 ft of water at sea level, and an engine in fair condition lifts two thirds of that, 22.5
   * ft. It counts no vapour pressure, which cold water hardly has.
   */
  @Test
  void where_nobody_states_a_suction_head_two_thirds_of_what_the_air_holds_are_dependable() {
    Drafting drafting = new Drafting(10, 0, 34, UNKNOWN);

    assertThat(drafting.limitFt()).isCloseTo(33.9, within(0.3));
    assertThat(drafting.mostFt()).isCloseTo(22.5, within(0.2));
  }

  @Test
  void a_stated_suction_head_is_left_out_of_what_the_air_holds() {
    Drafting drafting = new Drafting(10, 0, 60, OptionalDouble.of(12));

    assertThat(drafting.mostFt()).isCloseTo(drafting.limitFt() - 12, within(1e-9));
    // What stands at the intake when lift and loss come to 15 ft leaves 15 ft less; the line itself
    // is worked out with the weight of the water, not with the trade's 0.434 psi for a foot.
    SuctionLine line = new SuctionLine(List.of(), 15, 0, 60);
    double intakePsi = line.inletPsi(0);
    assertThat(drafting.drawnFt(intakePsi)).isCloseTo(15, within(0.05));
    assertThat(drafting.npshAvailableFt(intakePsi))
        .isCloseTo(line.npshAvailableFt(0), within(0.05));
    assertThat(drafting.workingLiftFt(intakePsi))
        .isCloseTo(drafting.limitFt() - 12 - 5, within(0.05));
  }

  @Test
  void higher_places_and_warmer_water_bear_less() {
    double mostFt = new Drafting(5, 0, 50, UNKNOWN).mostFt();

    assertThat(new Drafting(5, 5_000, 50, UNKNOWN).mostFt()).isLessThan(mostFt - 3);
    assertThat(new Drafting(5, 0, 150, UNKNOWN).mostFt()).isLessThan(mostFt - 3);
  }
}
