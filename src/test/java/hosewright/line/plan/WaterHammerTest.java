package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.HoseType;
import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.law.WaveSpeeds;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.line.search.SmallShop;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a valve slammed shut does in hose, which is softer than any pipe. */
class WaterHammerTest {
  private static final double FT_IN_M = 0.3048;

  // a = 1/√(ρ (1/K + ΔA/(A Δp))), ρ = 999.5 kg/m³, K = 2.07 GPa, Δp = 300 psi = 2.0684 MPa.
  // 16 %: 1/√(999.5 x (4.831e-10 + 7.7354e-8)) = 113.4 m/s; 5 %: 1/√(999.5 x 2.4656e-8) = 201.4.
  @Test
  void woven_hose_is_taken_between_the_two_speeds_that_its_swelling_gives() {
    for (HoseType woven : new HoseType[] {HoseType.ATTACK, HoseType.SUPPLY, HoseType.FORESTRY}) {
      WaveSpeeds speeds = WaveSpeeds.of(OptionalDouble.empty(), woven.word());
      assertThat(speeds.lowFtPerS() * FT_IN_M).isCloseTo(113.4, within(0.1));
      assertThat(speeds.highFtPerS() * FT_IN_M).isCloseTo(201.4, within(0.1));
      assertThat(speeds.source()).contains("estimate, no source");
    }
  }

  @Test
  void no_hose_is_given_the_figure_of_a_pipe() {
    for (HoseType type : HoseType.values()) {
      WaveSpeeds speeds = WaveSpeeds.of(OptionalDouble.empty(), type.word());
      assertThat(speeds.lowFtPerS()).as(type.word()).isLessThan(speeds.highFtPerS());
      // 1000 to 1400 m/s are figures of metal pipe: common practice, no source.
      assertThat(speeds.highFtPerS() * FT_IN_M).as(type.word()).isLessThan(600);
    }
  }

  @Test
  void what_the_maker_states_goes_before_any_estimate() {
    WaveSpeeds speeds = WaveSpeeds.of(OptionalDouble.of(500), HoseType.ATTACK.word());
    assertThat(speeds.lowFtPerS()).isEqualTo(500);
    assertThat(speeds.highFtPerS()).isEqualTo(500);
  }

  // 100 gpm in 1.5 in bore: 18.16 ft/s. Low, 113.4 m/s = 372 ft/s: 62.4/32.174 x 372 x 18.16/144 =
  // 91.0 psi over the 80 psi it stands under: 171 psi. High, for hose of unknown type 0.5 %: 587
  // m/s = 1927 ft/s, 471 psi.
  @Test
  void it_warns_only_where_even_the_low_estimate_is_more_than_the_hose_may_carry() {
    Check bears = surge(plan(180));
    assertThat(bears.outcome()).isEqualTo(Check.Outcome.PASS);
    assertThat(bears.value()).isCloseTo(171, within(0.5));
    assertThat(bears.note()).startsWith("a valve slammed shut adds 91 to 471 psi");
    assertThat(plan(180).cautions()).noneMatch(caution -> caution.contains("sudden closure"));

    assertThat(surge(plan(165)).outcome()).isEqualTo(Check.Outcome.WARN);
    assertThat(plan(165).cautions())
        .anyMatch(
            caution -> caution.contains("sudden closure raises the pressure by 91 psi or more"));
  }

  private static Check surge(LinePlan plan) {
    return plan.checks().stream()
        .filter(check -> check.id() == CheckId.SUDDEN_CLOSURE)
        .findFirst()
        .orElseThrow();
  }

  private static LinePlan plan(double workingPsi) {
    SmallShop shop = new SmallShop();
    shop.part("H", ItemKind.HOSE, "1.5 NH female swivel", "1.5 NH male")
        .hose(1.5, 50, "H")
        .working(workingPsi)
        .at(5_000);
    return shop.plan(
        "from", "1.5 NH male pump",
        "to", "1.5 NH female nozzle",
        "length", "45 ft",
        "flow", "100 gpm",
        "need", "50 psi",
        "source-pressure", "80 psi");
  }
}
