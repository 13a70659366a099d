package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.law.Physical;
import hosewright.line.model.Accessory;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics.Place;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Lines over ground that is known between their ends, on the demo catalogue. */
class RouteTest {
  /** Down 200 ft to a brook and up again to the height of the pump. */
  private static final String VALLEY = "0 ft at 0 ft; -200 ft at 600 ft, brook; 0 ft at 1200 ft";

  private static final String HUMP = "0 ft at 0 ft; 120 ft at 500 ft, ridge; 0 ft at 1000 ft";

  /** A pumper of 215 psi shut, a 2.5 in line to a tank. */
  private static LinePlan plan(String... way) {
    return DemoCatalogue.plan(
        Stream.concat(
                Stream.of(
                    "from", "2.5 NH male pump",
                    "to", "2.5 NH female tank",
                    "flow", "100 gpm",
                    "need", "20 psi",
                    "use", "fire",
                    "size", "2.5 in",
                    "pump-curve", "215 psi at 0 gpm; 200 psi at 250 gpm; 150 psi at 500 gpm"),
                Stream.of(way))
            .toArray(String[]::new));
  }

  @Test
  void hose_in_a_valley_is_held_to_what_it_sees_there_with_the_nozzle_shut() {
    double shutPsi = 215 + 200 * Physical.PSI_PER_FT;

    Check even = check(plan("length", "1200 ft"), CheckId.HOSE_WORKING_PRESSURE);
    assertThat(even.value()).isEqualTo(215, within(0.01));
    assertThat(even.limit()).as("hose that bears no more than that").isLessThan(shutPsi);

    LinePlan valley = plan("route", VALLEY);
    Check seen = check(valley, CheckId.HOSE_WORKING_PRESSURE);
    assertThat(seen.value()).isEqualTo(shutPsi, within(0.01));
    assertThat(valley.feasible()).as(seen.note()).isTrue();
    assertThat(seen.limit()).as("stronger hose is laid").isGreaterThanOrEqualTo(shutPsi);
    assertThat(check(valley, CheckId.SERVICE_TEST_PRESSURE).value())
        .isEqualTo(shutPsi, within(0.01));
  }

  @Test
  void the_plan_names_the_worst_place() {
    LinePlan valley = plan("route", VALLEY);

    assertThat(check(valley, CheckId.HOSE_WORKING_PRESSURE).note())
        .contains("301.8 psi", "shut", "200 ft below the source");
    assertThat(valley.summary()).contains("lowest 200 ft below the source at 600 ft");
  }

  @Test
  void a_valley_no_hose_of_the_size_bears_is_refused_with_the_shut_pressure_that_forbids_it() {
    LinePlan deep = plan("route", "0 ft at 0 ft; -480 ft at 900 ft; 0 ft at 1800 ft");

    assertThat(deep.feasible()).isFalse();
    assertThat(deep.limitedBy().orElseThrow())
        .contains("hose working pressure", "423.3 psi", "480 ft below the source");
  }

  @Test
  void height_is_known_at_every_coupling_and_where_the_ground_turns_between_them() {
    List<Station> profile = plan("route", VALLEY).hydraulics().profile();

    double laidFt = profile.get(profile.size() - 1).distanceFt();
    for (Station at : profile) {
      double alongFt = at.distanceFt() * 1200 / laidFt;
      assertThat(at.elevationFt())
          .as("%s at %s ft", at.name(), at.distanceFt())
          .isEqualTo(-200 + Math.abs(alongFt - 600) / 3, within(0.001));
      assertThat(at.closedPsi())
          .isEqualTo(215 - at.elevationFt() * Physical.PSI_PER_FT, within(1e-6));
    }
    assertThat(profile.stream().mapToDouble(Station::elevationFt).min()).hasValue(-200);
  }

  @Test
  void a_place_between_two_couplings_is_told_from_a_coupling() {
    LinePlan hump = plan("route", "0 ft at 0 ft; 60 ft at 110 ft; 0 ft at 300 ft");

    List<Station> within =
        hump.hydraulics().profile().stream().filter(at -> at.place() == Place.WITHIN).toList();
    assertThat(within).hasSize(1);
    assertThat(within.get(0).elevationFt()).isEqualTo(60, within(1e-6));
    assertThat(hump.hydraulics().summits()).isEqualTo(within);
  }

  @Test
  void a_summit_keeps_some_pressure_while_the_water_flows() {
    // 60 psi climbs 138 ft with nothing flowing and nothing lost.
    LinePlan high =
        DemoCatalogue.plan(
            "from", "2.5 NH male hydrant",
            "to", "2.5 NH female tank",
            "flow", "150 gpm",
            "need", "5 psi",
            "size", "2.5 in",
            "source-pressure", "60 psi",
            "route", HUMP);

    assertThat(high.feasible()).isFalse();
    assertThat(check(high, CheckId.DELIVERED_PRESSURE).outcome()).isEqualTo(Outcome.PASS);
    Check summit = check(high, CheckId.SUMMIT_PRESSURE);
    assertThat(summit.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(summit.limit()).isPositive();
    assertThat(summit.note()).contains("120 ft above the source");
    assertThat(high.limitedBy().orElseThrow()).startsWith("pressure at a summit");
    assertThat(high.instead()).anyMatch(instead -> instead.startsWith("a source that holds"));
  }

  @Test
  void a_source_that_is_not_stated_must_hold_what_carries_the_water_over_the_summit() {
    LinePlan over =
        DemoCatalogue.plan(
            "from", "2.5 NH male pump",
            "to", "2.5 NH female tank",
            "flow", "100 gpm",
            "need", "5 psi",
            "size", "2.5 in",
            "route", "0 ft at 0 ft; 120 ft at 500 ft; -200 ft at 1000 ft");

    assertThat(over.feasible()).isTrue();
    Station summit =
        over.hydraulics().profile().stream()
            .max(Comparator.comparingDouble(Station::elevationFt))
            .orElseThrow();
    double keptPsi = check(over, CheckId.SUMMIT_PRESSURE).limit();
    assertThat(summit.flowingPsi()).isEqualTo(keptPsi, within(1e-6));
    assertThat(over.hydraulics().requiredSourcePsi())
        .isEqualTo(over.hydraulics().profile().get(0).flowingPsi(), within(1e-6))
        .isGreaterThan(120 * Physical.PSI_PER_FT + keptPsi);
    assertThat(over.hydraulics().deliveredPsi())
        .as("more arrives than is needed, and the plan says so")
        .isEqualTo(
            over.hydraulics().profile().get(over.hydraulics().profile().size() - 1).flowingPsi(),
            within(1e-6));
  }

  @Test
  void lines_behind_a_wye_lie_on_the_end_of_the_route() {
    LinePlan wye =
        DemoCatalogue.plan(
            "from", "2.5 NH male pump",
            "to", "1.5 NH female nozzle",
            "attack-lines", "2",
            "attack-length", "150 ft",
            "flow", "100 gpm",
            "need", "75 psi",
            "use", "fire",
            "route", "0 ft at 0 ft; -30 ft at 200 ft; 10 ft at 300 ft; 40 ft at 450 ft");

    assertThat(wye.layout().hoseLegs().get(0).hose().orElseThrow().neededFt())
        .isEqualTo(300 * 1.05, within(1e-9));
    double wyeFt = wye.layout().hoseLegs().get(0).hose().orElseThrow().laidFt();
    List<Double> heights = new ArrayList<>();
    wye.hydraulics().profile().stream()
        .filter(at -> Math.abs(at.distanceFt() - wyeFt) < 1e-6)
        .forEach(at -> heights.add(at.elevationFt()));
    assertThat(heights).isNotEmpty().allSatisfy(ft -> assertThat(ft).isEqualTo(10, within(1e-6)));
    assertThat(wye.hydraulics().profile().get(wye.hydraulics().profile().size() - 1).elevationFt())
        .isEqualTo(40, within(1e-6));
  }

  @Test
  void a_road_on_the_route_is_crossed_on_ramps_where_the_hose_passes_it() {
    LinePlan plan =
        plan("route", "0 ft at 0 ft; -8 ft at 200 ft, Road, 2 lanes; 5 ft at 400 ft, old oak");

    Accessory ramp = plan.bill().accessories().get(0);
    assertThat(ramp.where()).contains("210 ft along the hose", "2 lanes");
    assertThat(ramp.count()).isEqualTo(2);
    assertThat(plan.cautions()).anyMatch(caution -> caution.contains("use ramps"));
  }

  @Test
  void a_road_says_how_many_lanes_it_has() {
    assertThatThrownBy(() -> plan("route", "0 ft at 0 ft; -8 ft at 200 ft, road; 5 ft at 400 ft"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("route")
        .hasMessageContaining("road 2 lanes");
    assertThatThrownBy(() -> plan("route", "0 ft at 0 ft; 5 ft at 400 ft, road 2 lanes"))
        .hasMessageContaining("between the source and the end");
  }

  @Test
  void a_route_stands_instead_of_length_and_rise() {
    assertThatThrownBy(() -> plan("route", VALLEY, "length", "400 ft", "rise", "5 ft"))
        .isInstanceOfSatisfying(
            BadInputException.class,
            bad ->
                assertThat(bad.problems())
                    .extracting(Problem::field)
                    .containsExactly("length", "rise"));
    assertThatThrownBy(RouteTest::plan)
        .as("neither says how far it is")
        .hasMessageContaining("length");
  }

  @Test
  void ground_of_which_only_the_ends_are_known_is_said_to_be_taken_as_even() {
    assertThat(plan("length", "500 ft", "rise", "10 ft").cautions()).noneMatch(RouteTest::ofGround);
    assertThat(plan("length", "501 ft").cautions()).anyMatch(RouteTest::ofGround);
    assertThat(plan("length", "300 ft", "rise", "-11 ft").cautions()).anyMatch(RouteTest::ofGround);
    assertThat(plan("route", VALLEY).cautions()).noneMatch(RouteTest::ofGround);
  }

  private static boolean ofGround(String caution) {
    return caution.contains("taken as even");
  }

  private static Check check(LinePlan plan, CheckId id) {
    return plan.checks().stream().filter(check -> check.id() == id).findFirst().orElseThrow();
  }
}
