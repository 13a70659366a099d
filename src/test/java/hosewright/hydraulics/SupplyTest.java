package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.PumpCurve.Point;
import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class SupplyTest {

  @Test
  void a_residual_above_static_is_refused_with_the_reason() {
    assertThatThrownBy(() -> new Hydrant(60, 80, 900))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("residual pressure cannot be '80 psi'")
        .hasMessageContaining("if the two readings are swapped, exchange them");
    assertThatThrownBy(() -> new Hydrant(60, 60, 900)).isInstanceOf(BadInputException.class);
  }

  @Test
  void all_that_is_wrong_with_a_hydrant_is_said_at_once() {
    BadInputException refused =
        catchThrowableOfType(
            BadInputException.class, () -> new Hydrant(Double.NaN, -1, 0, Double.NaN));
    assertThat(refused.problems())
        .extracting("field")
        .containsExactly("static pressure", "residual pressure", "test flow", "hydrant loss");
  }

  @Test
  void a_hydrant_loss_grows_with_the_square_of_the_flow() {
    Hydrant bare = new Hydrant(80, 60, 900);
    Hydrant lossy = new Hydrant(80, 60, 900, 8);
    assertThat(bare.pressurePsi(450) - lossy.pressurePsi(450)).isCloseTo(2, within(1e-9));
    assertThat(lossy.mainPsi(450)).isEqualTo(bare.mainPsi(450));
  }

  // NFPA 291 (section notes, secondary): the test should draw the main down by 10 % of static.
  @Test
  void a_test_that_hardly_drew_the_main_down_is_told() {
    assertThat(new Hydrant(80, 72, 900).testDrewEnough()).isTrue();
    assertThat(new Hydrant(80, 75, 900).testDrewEnough()).isFalse();
  }

  @Test
  void a_pump_curve_is_straight_between_points_and_ends_with_them() {
    PumpCurve pump = new PumpCurve(List.of(new Point(0, 150), new Point(1_000, 100)));
    assertThat(pump.closedPsi()).isEqualTo(150);
    assertThat(pump.pressurePsi(500)).isCloseTo(125, within(1e-9));
    assertThat(pump.pressurePsi(1_001)).isZero();
    assertThat(pump.mostFlowGpm()).isEqualTo(1_000);
  }

  @Test
  void a_pump_curve_that_cannot_be_is_refused() {
    assertRefused("shut-off", new Point(100, 150), new Point(500, 120));
    assertRefused("pressure never rises", new Point(0, 100), new Point(500, 120));
    assertRefused("flow rises", new Point(0, 100), new Point(0, 90));
    assertRefused("two points or more", new Point(0, 100));
    assertRefused("pressure 0 up to", new Point(0, Double.NaN), new Point(10, 20));
  }

  @Test
  void a_source_without_pressure_is_refused() {
    for (double psi : new double[] {0, -10, Double.NaN, Double.POSITIVE_INFINITY, 2_001}) {
      assertThatThrownBy(() -> new FixedPressure(psi)).isInstanceOf(BadInputException.class);
    }
  }

  private static void assertRefused(String why, Point... points) {
    assertThatThrownBy(() -> new PumpCurve(List.of(points)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining(why);
  }
}
