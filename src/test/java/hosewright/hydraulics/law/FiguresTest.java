package hosewright.hydraulics.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.suction.Suction;
import hosewright.problem.BadInputException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {

  // Lewis County Fire District 13, Introduction to Basic Hydraulics: 8.34 lb/gal; the cylinder
  // formula as in NWCG Fire Math 3.2. Printed to 0.1 lb.
  @ParameterizedTest
  @CsvSource({
    "1,34.0",
    "1.5,76.6",
    "1.75,104.2",
    "2,136.1",
    "2.5,212.7",
    "3,306.2",
    "4,544.4",
    "5,850.7",
    "6,1225.0"
  })
  void water_in_100_ft_of_hose_weighs_as_tabled(double boreIn, double pounds) {
    assertThat(Physical.waterWeightLb(boreIn, 100)).isCloseTo(pounds, within(0.08));
  }

  // Common practice, no source: v = 0.4085 Q/d².
  @Test
  void velocity_follows_the_taught_constant() {
    assertThat(Physical.velocityFtPerS(250, 2.5)).isCloseTo(0.4085 * 250 / 6.25, within(0.002));
  }

  @Test
  void a_hose_fills_in_its_volume_over_the_flow() {
    assertThat(Physical.fillMinutes(25.5, 250)).isCloseTo(0.102, within(1e-9));
    assertThatThrownBy(() -> Physical.fillMinutes(25.5, 0)).isInstanceOf(BadInputException.class);
  }

  // Pump operator study cards (weak): no lift beyond 33.8 to 33.9 ft. They leave out that cold
  // water boils too, which takes another half foot.
  @Test
  void no_suction_lifts_beyond_the_atmosphere() {
    assertThat(Suction.limitFt(0, 40)).isBetween(33.3, 33.9);
    assertThat(Suction.limitFt(5_000, 40)).isLessThan(Suction.limitFt(0, 40));
    assertThat(Suction.limitFt(0, 200)).isLessThan(Suction.limitFt(0, 40) / 2);
    assertThat(Suction.checkedLiftFt("lift", 15, 0, 60)).isEqualTo(15);
    for (double lift : new double[] {34, -1, Double.NaN}) {
      assertThatThrownBy(() -> Suction.checkedLiftFt("lift", lift, 0, 60))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining("no pump lifts water by suction beyond the 33.");
    }
  }

  // By definition of the temperature scale before 1990: water boils at 212 °F under 14.696 psi.
  @Test
  void water_boils_at_212_f_under_one_atmosphere() {
    assertThat(Suction.vapourPsia(212)).isCloseTo(14.696, within(0.01));
    assertThat(Suction.atmosphericPsia(0)).isEqualTo(14.696);
  }

  @ParameterizedTest
  @ValueSource(doubles = {31, 213, Double.NaN})
  void water_that_is_ice_or_steam_is_refused(double temperatureF) {
    assertThatThrownBy(() -> Water.atF(temperatureF)).isInstanceOf(BadInputException.class);
  }

  @Test
  void a_size_without_a_taught_coefficient_gets_none() {
    assertThat(FrictionTable.coefficient(2.25)).isEmpty();
  }

  @Test
  void a_disputed_coefficient_says_so_and_shows_the_other() {
    FrictionTable.Row used = FrictionTable.coefficient(1.75).orElseThrow();
    assertThat(used.howSure()).contains("15.5").contains("10");
    assertThat(FrictionTable.all(1.75))
        .extracting(FrictionTable.Row::c)
        .containsExactly(15.5, 10.0);
  }

  @Test
  void couplings_decide_between_two_coefficients_of_a_size() {
    double small = FrictionTable.coefficient(3, 2.5).orElseThrow().c();
    double full = FrictionTable.coefficient(3).orElseThrow().c();
    assertThat(small).isGreaterThan(full);
    assertThat(FrictionTable.coefficient(3, 4).orElseThrow().c()).isEqualTo(small);
  }

  @Test
  void every_coefficient_has_a_source() {
    Stream.of(0.75, 1.0, 1.25, 1.5, 1.75, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0)
        .map(FrictionTable::all)
        .forEach(
            rows ->
                assertThat(rows)
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(row.source()).isNotBlank()));
  }

  // The relay formula itself, L = (PDP - 20) 100 / FL: 5 in hose (C 0.08), 1000 gpm, 185 psi.
  @Test
  void relay_pumps_stand_as_far_apart_as_pressure_lasts() {
    double spacing = RelayPump.spacingFt(185, new CoefficientLaw(0.08), 1_000, 0);
    assertThat(spacing).isCloseTo((185 - 20) * 100 / 8.0, within(1e-6));
    assertThat(RelayPump.spacingFt(185, new CoefficientLaw(0.08), 1_000, 400)).isZero();
  }

  @Test
  void an_automatic_nozzle_holds_its_pressure_within_its_range() {
    Demand nozzle = new Demand.AutomaticFog(60, 350, 100);
    assertThat(nozzle.needPsi(30)).isCloseTo(25, within(1e-9));
    assertThat(nozzle.needPsi(200)).isEqualTo(100);
    assertThat(nozzle.needPsi(700)).isCloseTo(400, within(1e-9));
    // 0.0505 Q √p, Montgomery County Fire and Rescue Service, Hydraulics References.
    assertThat(nozzle.reactionLbf(200).orElseThrow()).isCloseTo(101, within(1e-9));
  }

  @Test
  void laws_refuse_what_no_hose_has() {
    assertThatThrownBy(() -> new CoefficientLaw(0)).isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> new HazenWilliams(0, 2.5)).isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> new HazenWilliams(120, Double.NaN))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> new DarcyWeisbach(0.2, 2.5, 60.0))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("roughness");
    assertThatThrownBy(() -> new Demand.SmoothBore(-1)).isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> new Demand.FlowAndPressure(100, 0))
        .isInstanceOf(BadInputException.class);
  }
}
