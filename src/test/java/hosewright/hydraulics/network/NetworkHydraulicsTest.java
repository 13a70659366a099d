package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.law.CoefficientLaw;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The two questions on small layouts that can be worked by hand. */
class NetworkHydraulicsTest {
  private static final Node.Source ENGINE = new Node.Source("engine", new FixedPressure(199));
  private static final Node.Junction WYE = new Node.Junction("wye");

  // Coefficients: City of Rohnert Park training slides (2.5 in: 2; 1.75 in: 10).
  private static List<LineElement> wide(double lengthFt) {
    return List.of(new HoseLeg("2.5 in hose", new CoefficientLaw(2), lengthFt, 2.5));
  }

  private static List<LineElement> narrow(double lengthFt) {
    return List.of(new HoseLeg("1.75 in hose", new CoefficientLaw(10), lengthFt, 1.75));
  }

  private static List<LineElement> rising(double riseFt) {
    return List.of(new HoseLeg("2.5 in hose", new CoefficientLaw(2), 100, riseFt, 2.5, 1, 2));
  }

  private static Node.End nozzle(String name) {
    return new Node.End(name, new Demand.FixedGallonage(150, 100));
  }

  private static Network wyed(double leftFt, double rightFt) {
    return new Network(
        List.of(ENGINE, WYE, nozzle("left nozzle"), nozzle("right nozzle")),
        List.of(
            new Link("supply", "engine", "wye", wide(300)),
            new Link("left", "wye", "left nozzle", narrow(leftFt)),
            new Link("right", "wye", "right nozzle", narrow(rightFt))));
  }

  @Test
  void the_wye_is_held_at_what_the_longer_branch_needs_and_the_other_is_throttled() {
    Required required =
        NetworkHydraulics.required(
            wyed(100, 200), Map.of("left nozzle", 150.0, "right nozzle", 150.0));

    // By hand: 10 x 1.5² x 1 = 22.5 and 45 psi in the branches, 2 x 3² x 3 = 54 psi in the trunk.
    assertThat(required.needPsi("wye")).isCloseTo(145, within(1e-9));
    assertThat(required.sourcePsi("engine")).isCloseTo(199, within(1e-9));
    assertThat(required.state().link("supply").flowGpm()).isEqualTo(300);
    assertThat(required.state().end("left nozzle").psi()).isCloseTo(122.5, within(1e-9));
    assertThat(required.throttlePsi("left")).isCloseTo(22.5, within(1e-9));
    assertThat(required.throttlePsi("right")).isZero();
    assertThat(required.throttlePsi("supply")).isZero();
  }

  @Test
  void what_a_source_brings_is_what_those_flows_need() {
    NetworkState state = NetworkHydraulics.arriving(wyed(200, 200));

    assertThat(state.psi("wye")).isCloseTo(145, within(1e-3));
    assertThat(state.end("left nozzle").oneGpm()).isCloseTo(150, within(0.01));
    assertThat(state.source("engine").flowGpm()).isCloseTo(300, within(0.01));
  }

  @Test
  void copies_are_links_of_their_own() {
    Network copies =
        new Network(
            List.of(ENGINE, WYE, nozzle("nozzle")),
            List.of(
                new Link("supply", "engine", "wye", wide(300)),
                new Link("attack", "wye", "nozzle", narrow(200), 1, 2)));

    Required required = NetworkHydraulics.required(copies, Map.of("nozzle", 150.0));
    assertThat(required.sourcePsi("engine")).isCloseTo(199, within(1e-9));
    assertThat(required.state().link("attack").oneLineGpm()).isEqualTo(150);
    assertThat(required.state().link("attack").flowGpm()).isEqualTo(300);
    NetworkState open = NetworkHydraulics.arriving(copies);
    assertThat(open.end("nozzle").oneGpm()).isCloseTo(150, within(0.01));
    // By hand, one shut: 199 = (2 x 3 + 10 x 2) (Q/100)² + 100 (Q/150)², so Q = 167.98 gpm.
    double alone = Math.sqrt(199 / (26.0 / 10_000 + 100.0 / 22_500));
    assertThat(NetworkHydraulics.oneShut(copies, "nozzle").end("nozzle").oneGpm())
        .isCloseTo(alone, within(0.01));
    assertThat(NetworkHydraulics.alone(copies, "nozzle").end("nozzle").oneGpm())
        .isCloseTo(alone, within(0.01));
    assertThat(NetworkHydraulics.allShut(copies).end("nozzle").psi()).isEqualTo(199);
  }

  @Test
  void unlike_lines_that_meet_again_share_by_equal_loss() {
    Network network =
        new Network(
            List.of(ENGINE, new Node.Junction("siamese"), nozzle("monitor")),
            List.of(
                new Link("short", "engine", "siamese", wide(100)),
                new Link("long", "engine", "siamese", wide(400)),
                new Link("last", "siamese", "monitor", List.of())));
    Required required = NetworkHydraulics.required(network, Map.of("monitor", 300.0));

    // By hand: four times as long carries half as much, so 200 and 100 gpm, at 2 x 2² = 8 psi.
    assertThat(required.state().link("short").flowGpm()).isCloseTo(200, within(1e-3));
    assertThat(required.state().link("long").flowGpm()).isCloseTo(100, within(1e-3));
    assertThat(required.sourcePsi("engine")).isCloseTo(400 + 8, within(1e-3));
    assertThat(required.throttlePsi().values()).containsOnly(0.0);
  }

  @Test
  void a_relay_pump_needs_its_intake_and_gives_its_discharge() {
    PumpCurve curve =
        new PumpCurve(List.of(new PumpCurve.Point(0, 200), new PumpCurve.Point(1_000, 100)));
    Network relay =
        new Network(
            List.of(ENGINE, new Node.Pump("pump", curve), nozzle("nozzle")),
            List.of(
                new Link("first", "engine", "pump", wide(600)),
                new Link("second", "pump", "nozzle", wide(600))));
    Required required = NetworkHydraulics.required(relay, Map.of("nozzle", 300.0));

    // By hand: 2 x 3² x 6 = 108 psi in each; the pump adds 200 - 30 = 170 psi. The nozzle, at 300
    // gpm, needs 400 psi, so the intake 400 + 108 - 170 = 338 psi.
    assertThat(required.needPsi("pump")).isCloseTo(338, within(1e-9));
    assertThat(required.sourcePsi("engine")).isCloseTo(446, within(1e-9));
    assertThat(required.state().pump("pump").dischargePsi()).isCloseTo(508, within(1e-9));
    // At 150 gpm: 27 psi each, 185 psi more, so 100 + 27 - 185 = -58 psi; but no less than 20 psi
    // is kept (Lewis County Fire District 13), and 78 psi must be throttled behind the pump.
    Required kept = NetworkHydraulics.required(relay, Map.of("nozzle", 150.0));
    assertThat(kept.needPsi("pump")).isEqualTo(20);
    assertThat(kept.sourcePsi("engine")).isCloseTo(47, within(1e-9));
    assertThat(kept.throttlePsi("second")).isCloseTo(78, within(1e-9));
    assertThat(kept.throttlePsi("first")).isZero();
  }

  @Test
  void take_offs_along_a_header_each_need_what_is_left_behind_them() {
    Demand.FlowAndPressure tap = new Demand.FlowAndPressure(100, 50);
    Network header =
        new Network(
            List.of(
                Node.Source.unknown("pump"),
                new Node.Junction("first"),
                new Node.Junction("second"),
                new Node.End("near tap", tap),
                new Node.End("middle tap", tap),
                new Node.End("far tap", tap)),
            List.of(
                new Link("1", "pump", "first", wide(100)),
                new Link("2", "first", "second", wide(100)),
                new Link("3", "second", "far tap", wide(100)),
                new Link("near", "first", "near tap", List.of()),
                new Link("middle", "second", "middle tap", List.of())));
    Required required =
        NetworkHydraulics.required(
            header, Map.of("near tap", 100.0, "middle tap", 100.0, "far tap", 100.0));

    // By hand, from the far end: 2 x 1² = 2 psi, 2 x 2² = 8 psi, 2 x 3² = 18 psi.
    assertThat(required.needPsi("second")).isCloseTo(52, within(1e-9));
    assertThat(required.needPsi("first")).isCloseTo(60, within(1e-9));
    assertThat(required.sourcePsi("pump")).isCloseTo(78, within(1e-9));
    assertThat(required.throttlePsi("near")).isCloseTo(10, within(1e-9));
    assertThat(required.throttlePsi("middle")).isCloseTo(2, within(1e-9));
    assertThat(required.throttlePsi("3")).isZero();
  }

  @Test
  void outlets_of_one_hydrant_share_its_one_curve() {
    Hydrant hydrant = new Hydrant(80, 40, 1_000);
    Network network =
        new Network(
            List.of(new Node.Source("hydrant", hydrant), nozzle("left"), nozzle("right")),
            List.of(
                new Link("left line", "hydrant", "left", wide(200)),
                new Link("right line", "hydrant", "right", wide(200))));
    NetworkState state = NetworkHydraulics.arriving(network);

    NetworkState.AtSource source = state.source("hydrant");
    assertThat(source.flowGpm()).isCloseTo(2 * state.end("left").oneGpm(), within(0.01));
    assertThat(source.psi()).isCloseTo(hydrant.pressurePsi(source.flowGpm()), within(0.001));
    assertThat(NetworkHydraulics.alone(network, "left").end("left").oneGpm())
        .isGreaterThan(state.end("left").oneGpm() + 1);
  }

  @Test
  void a_pump_that_cannot_lift_the_water_is_told() {
    PumpCurve weak =
        new PumpCurve(List.of(new PumpCurve.Point(0, 10), new PumpCurve.Point(500, 5)));
    Network relay =
        new Network(
            List.of(
                new Node.Source("pond pump", new FixedPressure(10)),
                new Node.Pump("pump", weak),
                new Node.End("tank", new Demand.OpenEnd(2.5, 0))),
            List.of(
                new Link("first", "pond pump", "pump", rising(20)),
                new Link("second", "pump", "tank", rising(60))));
    NetworkState state = NetworkHydraulics.arriving(relay);

    // 10 psi less 20 ft, 10 psi more, less 60 ft, at 0.434 psi/ft: -14.7 psi at the tank.
    assertThat(state.end("tank").flows()).isFalse();
    assertThat(state.pump("pump").flowGpm()).isZero();
    assertThat(state.pump("pump").intakePsi()).isCloseTo(1.32, within(1e-9));
    assertThat(state.end("tank").psi()).isCloseTo(-14.72, within(1e-9));
  }

  @Test
  void a_weaker_source_brings_nothing_to_a_stronger_one() {
    Network network =
        new Network(
            List.of(
                ENGINE,
                new Node.Source("hydrant", new FixedPressure(40)),
                new Node.Junction("siamese"),
                nozzle("nozzle")),
            List.of(
                new Link("from engine", "engine", "siamese", wide(100)),
                new Link("from hydrant", "hydrant", "siamese", wide(100)),
                new Link("attack", "siamese", "nozzle", wide(50))));
    NetworkState state = NetworkHydraulics.arriving(network);

    assertThat(state.source("hydrant").flowGpm()).isZero();
    assertThat(state.source("hydrant").psi()).isEqualTo(40);
    assertThat(state.source("engine").flowGpm())
        .isCloseTo(state.end("nozzle").flowGpm(), within(1e-3));
  }

  @Test
  void heights_follow_from_the_rise_of_the_links() {
    Network network =
        new Network(
            List.of(
                new Node.Source("hydrant", 5, Optional.of(new FixedPressure(100))),
                WYE,
                nozzle("nozzle")),
            List.of(
                new Link("yard", "hydrant", "wye", rising(10)),
                new Link("stair", "wye", "nozzle", rising(-3))));

    assertThat(network.heightsFt()).containsEntry("wye", 15.0).containsEntry("nozzle", 12.0);
    assertThat(NetworkHydraulics.allShut(network).psi("nozzle"))
        .isCloseTo(100 - 7 * 0.434, within(1e-9));
  }
}
