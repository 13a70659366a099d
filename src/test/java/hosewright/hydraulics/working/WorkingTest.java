package hosewright.hydraulics.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.ParallelLegs;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.Solution;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.HazenWilliams;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkingTest {

  private static final List<LineElement> LINE =
      List.of(
          new HoseLeg("2.5 in hose", new CoefficientLaw(2), 400, 20, 2.5, 1, 8),
          new HoseLeg("steel pipe", new HazenWilliams(120, 2.5), 10, 2.5),
          new HoseLeg("plastic pipe", new DarcyWeisbach(0, 2.5, 60.0), 10, 2.5),
          new ParallelLegs(
              "pair",
              List.of(
                  new HoseLeg("left", new CoefficientLaw(2), 50, 2.5),
                  new HoseLeg("right", new CoefficientLaw(0.8), 50, 3))),
          new Fitting("reducer", 0.3, 1.5),
          new ApplianceLoss("wye", 350, 10),
          new RelayPump("pump", new FixedPressure(30)));

  @Test
  void each_formula_stands_with_its_numbers_and_source() {
    List<Working.Step> steps = Working.of(LineHydraulics.required(LINE, 200, 100));

    // City of Rohnert Park training slides: 32 psi.
    assertThat(steps.get(0).sentence())
        .isEqualTo(
            "2.5 in hose: C (Q/100)^2 (L/100) = 2 x (200/100)^2 x (400/100) = 32 psi"
                + " [City of Rohnert Park training slides, Calculating Friction Loss]");
    assertThat(steps.get(1).sentence()).contains("0.434 x 20 = 8.68 psi");
    assertThat(steps).allSatisfy(step -> assertThat(step.source()).isNotBlank());
  }

  @Test
  void the_steps_add_up_to_the_answer() {
    Solution solution = LineHydraulics.required(LINE, 400, 100);
    List<Working.Step> steps = Working.of(solution);
    double sum =
        steps.subList(0, steps.size() - 1).stream().mapToDouble(Working.Step::result).sum();

    assertThat(100 + sum).isCloseTo(solution.sourcePsi(), within(1e-9));
    assertThat(steps.get(steps.size() - 1).result()).isEqualTo(solution.sourcePsi());
  }
}
