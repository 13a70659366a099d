package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.Physical;
import hosewright.problem.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineHydraulicsTest {

  private static final HoseLeg LAY =
      new HoseLeg("2.5 in hose", new CoefficientLaw(2), 400, 20, 2.5, 1, 8);
  private static final List<LineElement> LINE =
      List.of(LAY, new Fitting("reducer", 0.3, 1.5), new ApplianceLoss("gated wye", 350, 10));

  @Test
  void the_pressure_required_is_the_need_plus_every_loss() {
    Solution solution = LineHydraulics.required(LINE, 200, 100);

    // City of Rohnert Park training slides, Calculating Friction Loss: 2-1/2 in, C 2, 200 gpm,
    // 400 ft lose 32 psi.
    assertThat(solution.losses().frictionPsi()).isCloseTo(32, within(1e-9));
    assertThat(solution.losses().appliancePsi()).isZero();
    assertThat(solution.sourcePsi()).isCloseTo(100 + solution.losses().totalPsi(), within(1e-9));
  }

  @Test
  void an_appliance_counts_from_its_threshold_on() {
    // Driver-operator exam item (weak source): one appliance at 350 gpm takes 10 psi.
    assertThat(LineHydraulics.losses(LINE, 349.99).appliancePsi()).isZero();
    assertThat(LineHydraulics.losses(LINE, 350).appliancePsi()).isEqualTo(10);
  }

  @Test
  void the_profile_closes_to_source_minus_losses() {
    Solution solution = LineHydraulics.required(LINE, 400, 80);
    List<Station> profile = solution.profile();

    assertThat(profile).hasSize(1 + 8 + 2);
    Station last = profile.get(profile.size() - 1);
    assertThat(last.flowingPsi()).isCloseTo(80, within(1e-9));
    assertThat(last.distanceFt()).isCloseTo(400, within(1e-9));
    assertThat(last.elevationFt()).isCloseTo(20, within(1e-9));
    assertThat(last.closedPsi())
        .isCloseTo(solution.sourcePsi() - 20 * Physical.PSI_PER_FT, within(1e-9));
  }

  @Test
  void the_flow_that_arrives_needs_just_the_source_it_has() {
    Demand tip = new Demand.SmoothBore(1.125);
    Arrival arrival = LineHydraulics.arriving(LINE, new FixedPressure(120), tip);

    Solution back = LineHydraulics.required(LINE, arrival.flowGpm(), tip);
    assertThat(back.sourcePsi()).isCloseTo(120, within(1e-3));
    assertThat(arrival.limitedBy()).startsWith("2.5 in hose: it takes ").endsWith(" of 120.0 psi");
  }

  @Test
  void a_source_too_weak_for_the_rise_says_so() {
    List<LineElement> uphill =
        List.of(new HoseLeg("hose", new CoefficientLaw(2), 400, 300, 2.5, 1, 1));
    Arrival arrival =
        LineHydraulics.arriving(uphill, new FixedPressure(100), new Demand.KFactor(10));

    assertThat(arrival.flows()).isFalse();
    assertThat(arrival.flowGpm()).isZero();
    assertThat(arrival.limitedBy())
        .isEqualTo(
            "no water arrives: the source gives 100.0 psi and the rise and standing water take"
                + " 130.2 psi");
  }

  @Test
  void water_standing_over_an_open_end_must_be_pushed_back() {
    Arrival arrival =
        LineHydraulics.arriving(List.of(LAY), new FixedPressure(10), new Demand.OpenEnd(2.5, 10));
    assertThat(arrival.limitedBy()).contains("gives 10.0 psi").contains("take 13.0 psi");
  }

  @Test
  void a_flow_that_would_switch_an_appliance_on_stays_just_below() {
    // Without the appliance 350 gpm and more would pass, with it less: the answer is the edge.
    List<LineElement> line = List.of(LAY, new ApplianceLoss("manifold", 350, 40));
    Arrival arrival = LineHydraulics.arriving(line, new FixedPressure(200), new Demand.KFactor(40));

    assertThat(arrival.flowGpm()).isBetween(349.99, 350.0);
    assertThat(arrival.pressures().deliveredPsi())
        .isGreaterThanOrEqualTo(arrival.pressures().needPsi());
  }

  @Test
  void a_pump_curve_ends_the_flow_where_it_ends() {
    PumpCurve pump =
        new PumpCurve(List.of(new PumpCurve.Point(0, 150), new PumpCurve.Point(100, 140)));
    Arrival arrival = LineHydraulics.arriving(List.of(LAY), pump, new Demand.KFactor(50));

    assertThat(arrival.limit()).isEqualTo(Arrival.Limit.SOURCE);
    assertThat(arrival.flowGpm()).isEqualTo(100);
  }

  @Test
  void a_main_drawn_under_its_limit_is_named() {
    Hydrant hydrant = new Hydrant(60, 40, 500);
    HoseLeg big = new HoseLeg("5 in hose", new CoefficientLaw(0.08), 50, 5);
    Arrival arrival = LineHydraulics.arriving(List.of(big), hydrant, new Demand.KFactor(400));
    assertThat(arrival.limitedBy()).startsWith("the main: ").contains("below 20 psi");
  }

  @Test
  void a_relay_pump_adds_its_pressure_flowing_and_shut() {
    RelayPump pump = new RelayPump("relay pump", new FixedPressure(100));
    Solution solution = LineHydraulics.required(List.of(LAY, pump, LAY), 200, 50);

    assertThat(solution.losses().boostPsi()).isEqualTo(100);
    List<Station> profile = solution.profile();
    assertThat(profile.get(profile.size() - 1).flowingPsi()).isCloseTo(50, within(1e-9));
    assertThat(profile.get(9).closedPsi() - profile.get(8).closedPsi()).isEqualTo(100);
  }

  @Test
  void what_cannot_be_is_refused() {
    assertThatThrownBy(() -> LineHydraulics.required(LINE, 0, 100))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("flow cannot be '0 gpm'");
    assertThatThrownBy(() -> LineHydraulics.required(LINE, -5, 100))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> LineHydraulics.required(LINE, Double.NaN, 100))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(() -> LineHydraulics.required(LINE, 100, Double.POSITIVE_INFINITY))
        .isInstanceOf(BadInputException.class);
    assertThatThrownBy(
            () -> LineHydraulics.arriving(LINE, new FixedPressure(100), new Demand.SmoothBore(3)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("no larger than the hose before it, here 2.5 in");
    assertThatThrownBy(() -> new HoseLeg("hose", new CoefficientLaw(2), 100, 101, 2.5, 1, 1))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("rise");
  }
}
