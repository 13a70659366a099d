package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.WyedLine.Arriving;
import hosewright.hydraulics.WyedLine.Branch;
import hosewright.hydraulics.WyedLine.Required;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class WyedLineTest {
  // Coefficients: City of Rohnert Park training slides (2.5 in: 2; 1.75 in: 10).
  private static final List<LineElement> TRUNK =
      List.of(new HoseLeg("2.5 in hose", new CoefficientLaw(2), 300, 2.5));

  private static Branch attack(String name, double lengthFt) {
    return new Branch(
        name,
        List.of(new HoseLeg("1.75 in hose", new CoefficientLaw(10), lengthFt, 1.75)),
        new Demand.FixedGallonage(150, 100));
  }

  @Test
  void the_wye_is_held_at_what_the_longer_branch_needs_and_the_other_is_gated_down() {
    WyedLine line = new WyedLine(TRUNK, List.of(attack("left", 100), attack("right", 200)));
    Required required = line.required(List.of(150.0, 150.0));

    // By hand: 10 x 1.5² x 1 = 22.5 and 45 psi in the branches, 2 x 3² x 3 = 54 psi in the trunk.
    assertThat(required.wyePsi()).isCloseTo(145, within(1e-9));
    assertThat(required.sourcePsi()).isCloseTo(199, within(1e-9));
    assertThat(required.gateDownPsi().get(0)).isCloseTo(22.5, within(1e-9));
    assertThat(required.gateDownPsi().get(1)).isZero();
  }

  @Test
  void equal_branches_are_one_line_of_two_hoses() {
    WyedLine line = new WyedLine(TRUNK, List.of(attack("left", 200), attack("right", 200)));
    Arriving arriving = line.arriving(new FixedPressure(199));

    assertThat(arriving.wyePsi()).isCloseTo(145, within(1e-4));
    assertThat(arriving.flowGpm()).isCloseTo(300, within(0.01));
    assertThat(arriving.branches().get(0).flowGpm()).isCloseTo(150, within(0.01));
  }

  @Test
  void what_arrives_needs_just_the_source_it_has() {
    WyedLine line = new WyedLine(TRUNK, List.of(attack("left", 100), attack("right", 250)));
    Supply hydrant = new Hydrant(120, 90, 800);
    Arriving arriving = line.arriving(hydrant);

    double left = arriving.branches().get(0).flowGpm();
    double right = arriving.branches().get(1).flowGpm();
    assertThat(left).isGreaterThan(right);
    assertThat(line.required(List.of(left, right)).sourcePsi())
        .isCloseTo(hydrant.pressurePsi(left + right), within(0.01));
  }

  @Test
  void a_wye_the_source_cannot_reach_is_refused() {
    List<LineElement> steep =
        List.of(new HoseLeg("hose", new CoefficientLaw(2), 300, 290, 2.5, 1, 6));
    WyedLine line = new WyedLine(steep, List.of(attack("left", 100), attack("right", 100)));
    assertThatThrownBy(() -> line.arriving(new FixedPressure(100)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("no water reaches the branches");
    assertThatThrownBy(() -> new WyedLine(TRUNK, List.of(attack("one", 100))))
        .isInstanceOf(BadInputException.class);
  }
}
