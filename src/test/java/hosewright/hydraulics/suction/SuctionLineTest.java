package hosewright.hydraulics.suction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a pump finds at its inlet, and how far it can stand above the water. */
class SuctionLineTest {

  // FOSSEE Scilab textbook companion 3720, Example 14-3: a pump 4 ft below the water of a
  // reservoir, 10.5 ft of pipe of 4 in, roughness 0.02 in, entrance, three elbows and a valve of K
  // 0.5, 0.3 each and 6.0; water at 25 °C at sea level. Its maker's curve of what it requires, as
  // read there: 5.06 ft at 500 gpm, 6.13 ft at 600, 7.0 ft at 680. Printed: cavitation occurs above
  // approximately 600 gpm, and sooner in warmer water.
  private static SuctionLine published(double celsius) {
    double temperatureF = celsius * 1.8 + 32;
    return new SuctionLine(
        List.of(
            new HoseLeg("pipe", new DarcyWeisbach(0.02, 4, temperatureF), 10.5, 4),
            new Fitting("entrance, elbows and valve", 0.5 + 3 * 0.3 + 6, 4)),
        -4,
        0,
        temperatureF);
  }

  @Test
  void a_published_pump_cavitates_above_the_flow_printed() {
    double at590 = 5.06 + 0.9 * (6.13 - 5.06);
    double at610 = 6.13 + 0.125 * (7.0 - 6.13);
    assertThat(published(25).npshAvailableFt(590)).isGreaterThan(at590);
    assertThat(published(25).npshAvailableFt(610)).isLessThan(at610);
    assertThat(published(60).npshAvailableFt(590)).isLessThan(at590);
  }

  @Test
  void the_lift_that_still_works_leaves_the_pump_just_what_it_requires() {
    List<LineElement> hose =
        List.of(new HoseLeg("hard suction", new CoefficientLaw(0.3), 20, 20, 4.5, 1, 2));
    double mostFt = new SuctionLine(hose, 0, 2_000, 60).mostLiftFt(750, 8);
    SuctionLine there = new SuctionLine(hose, mostFt, 2_000, 60);

    assertThat(there.npshAvailableFt(750)).isCloseTo(8, within(1e-9));
    // By hand: 0.3 x 7.5² x 0.2 = 3.375 psi, of which the height of the hose itself is no part.
    assertThat(there.lossPsi(750)).isCloseTo(3.375, within(1e-9));
    assertThat(there.inletPsi(0) - there.inletPsi(750)).isCloseTo(3.375, within(1e-9));
    assertThat(there.mostLiftFt(1_000, 8)).isLessThan(mostFt);
    assertThat(there.mostLiftFt(750, 12)).isCloseTo(mostFt - 4, within(1e-9));
  }

  @Test
  void without_flow_and_need_it_is_what_the_atmosphere_holds() {
    SuctionLine still = new SuctionLine(List.of(), 10, 0, 60);
    assertThat(still.mostLiftFt(0, 0)).isEqualTo(Suction.limitFt(0, 60));
    // 62.37 lb/ft³ at 60 °F (as in the published properties of water): 10 ft are 4.331 psi.
    assertThat(still.inletPsi(0)).isCloseTo(-4.331, within(0.001));
  }

  @Test
  void two_thirds_of_what_the_atmosphere_holds_is_the_rule_where_nothing_else_is_known() {
    assertThat(Suction.dependableLiftFt(3_000, 50))
        .isCloseTo(Suction.limitFt(3_000, 50) * 2 / 3, within(0.05));
  }

  @Test
  void what_is_no_number_of_feet_is_refused() {
    assertThatThrownBy(() -> new SuctionLine(List.of(), Double.NaN, 0, 60))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("lift");
    assertThatThrownBy(() -> new SuctionLine(List.of(), 5, 0, 60).mostLiftFt(100, -1))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("NPSH required");
  }
}
