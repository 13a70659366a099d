package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.network.Link;
import hosewright.hydraulics.network.Network;
import hosewright.hydraulics.network.NetworkHydraulics;
import hosewright.hydraulics.network.NetworkState;
import hosewright.hydraulics.network.Node;
import hosewright.job.Job;
import hosewright.line.model.Bill;
import hosewright.line.model.CheckId;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.line.search.SmallShop;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Lines that divide at a wye, start from several outlets, or have devices between sections. */
class NetworkPlanTest {

  /** Hose of 2.5 and 1.5 in sections of 50 ft, a wye, a siamese and a valve that lose nothing. */
  private static SmallShop shop() {
    SmallShop shop = new SmallShop();
    shop.part("H25", ItemKind.HOSE, "2.5 NH female swivel", "2.5 NH male")
        .hose(2.5, 50, "wide")
        .working(400)
        .at(20_000);
    shop.part("H15", ItemKind.HOSE, "1.5 NH female swivel", "1.5 NH male")
        .hose(1.5, 50, "narrow")
        .working(400)
        .at(10_000);
    shop.part("Y", ItemKind.WYE, "2.5 NH female swivel", "1.5 NH male", "1.5 NH male")
        .lossCoefficient(0)
        .at(15_000);
    shop.part("S", ItemKind.SIAMESE, "2.5 NH female swivel", "2.5 NH female swivel", "4 Storz")
        .lossCoefficient(0)
        .at(15_000);
    shop.part("V", ItemKind.VALVE, "2.5 NH female swivel", "2.5 NH male").loss(7).at(9_000);
    shop.part("G", ItemKind.GASKET, "2.5 NH female").at(100);
    return shop.part("g", ItemKind.GASKET, "1.5 NH female").at(50);
  }

  private static LinePlan plan(String... more) {
    return shop().plan(answers(more));
  }

  private static String[] answers(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male pump", "length", "300 ft", "slack", "0 %", "need", "100 psi"));
    answers.addAll(List.of(more));
    return answers.toArray(String[]::new);
  }

  private static final String[] WYED = {
    "to",
    "1.5 NH female nozzle",
    "flow",
    "100 gpm",
    "attack-lines",
    "2",
    "attack-length",
    "150 ft",
    "size",
    "2.5 in",
    "attack-size",
    "1.5 in"
  };

  /** That line for the laws of hydraulics alone: C of 2 and 24 by the size table. */
  private static Network wyed(double sourcePsi) {
    return new Network(
        List.of(
            new Node.Source("pump", new FixedPressure(sourcePsi)),
            new Node.Junction("wye"),
            new Node.End("nozzle", new Demand.FlowAndPressure(100, 100))),
        List.of(
            new Link(
                "supply",
                "pump",
                "wye",
                List.of(new HoseLeg("2.5", new CoefficientLaw(2), 300, 2.5))),
            new Link(
                "attack",
                "wye",
                "nozzle",
                List.of(new HoseLeg("1.5", new CoefficientLaw(24), 150, 1.5)),
                1,
                2)));
  }

  // Coefficients: City of Rohnert Park training slides. By hand: 2 x 2² x 3 = 24 psi in the supply
  // line, 24 x 1² x 1.5 = 36 psi in each attack line, 100 psi at the nozzles.
  @Test
  void a_wyed_line_needs_what_its_two_hoses_and_its_nozzles_need() {
    LinePlan plan = plan(WYED);
    assertThat(plan.feasible()).isTrue();
    assertThat(plan.flowGpm()).isEqualTo(200);
    assertThat(plan.hydraulics().requiredSourcePsi()).isCloseTo(160, within(1e-9));
    assertThat(plan.hydraulics().requiredSourcePsi())
        .isCloseTo(
            NetworkHydraulics.required(wyed(1), Map.of("nozzle", 100.0)).sourcePsi("pump"),
            within(1e-9));
    Leg branch = plan.layout().branchLeg().orElseThrow();
    Leg.Water attack = branch.water();
    assertThat(attack.inletPsi()).isCloseTo(136, within(1e-9));
    assertThat(attack.friction().lossPsi()).isCloseTo(36, within(1e-9));
    assertThat(attack.flowGpm()).isEqualTo(100);
    assertThat(branch.sectionCounts()).containsExactly(new SectionCount(50, 6));
    assertThat(FirstLeg.sections(plan)).containsExactly(new SectionCount(50, 6));
    assertThat(plan.layout().dividesAt().orElseThrow().part().item()).contains("Y");
  }

  @Test
  void the_flow_that_arrives_through_a_wye_is_what_its_branches_take() {
    String[] answers = answers(WYED);
    Job job = DemoCatalogue.job(with(answers, "source-pressure", "120 psi"));
    Flowing flowing = shop().planner().flow(job).orElseThrow();
    NetworkState.AtEnd arriving = NetworkHydraulics.arriving(wyed(120)).end("nozzle");
    assertThat(flowing.arrives().flowGpm()).isCloseTo(arriving.flowGpm(), within(0.01));
    assertThat(flowing.arrives().deliveredPsi()).isCloseTo(arriving.psi(), within(0.01));
    assertThat(flowing.layout().branchLeg().orElseThrow().water().flowGpm())
        .isCloseTo(flowing.arrives().flowGpm() / 2, within(1e-9));
  }

  @Test
  void goods_of_both_attack_lines_are_bought_and_every_joint_of_theirs_sealed() {
    LinePlan plan = plan(WYED);
    assertThat(quantity(plan, "H25")).isEqualTo(6);
    assertThat(quantity(plan, "H15")).isEqualTo(6);
    assertThat(quantity(plan, "Y")).isEqualTo(1);
    // 2.5 NH: 6 sections and the wye, a tenth of 7 to spare. 1.5 NH: 6 sections; the two nozzles
    // have their own and bring a spare to one in all.
    assertThat(quantity(plan, "G")).isEqualTo(8);
    assertThat(quantity(plan, "g")).isEqualTo(7);
  }

  @Test
  void reaction_and_tip_are_those_of_one_nozzle() {
    // One nozzle of 100 gpm at 100 psi: 29.7 x 0.58² x √100 = 99.9 gpm.
    LinePlan plan = plan(with(WYED, "tip", "0.58 in"));
    assertThat(plan.hydraulics().reactionLbf().orElseThrow())
        .isCloseTo(1.57 * 0.58 * 0.58 * 100, within(0.01));
    assertThat(plan.checks())
        .filteredOn(check -> check.name().equals("tip and flow agree"))
        .singleElement()
        .satisfies(check -> assertThat(check.value()).isLessThan(0.01));
  }

  // By hand, one nozzle of k = 100/√100 = 10 open at 160 psi: p + (2 x 3 + 24 x 1.5) Q²/100² = 160
  // with Q² = 100 p, so p = 160/1.42 = 112.68 psi and Q = 106.15 gpm.
  @Test
  void what_one_nozzle_gets_when_the_other_is_shut_is_said() {
    LinePlan plan = plan(WYED);
    assertThat(plan.checks())
        .filteredOn(check -> check.id() == CheckId.OTHER_NOZZLES_SHUT)
        .singleElement()
        .satisfies(
            check -> {
              assertThat(check.note()).contains("106 gpm at 113 psi");
              assertThat(check.value()).isCloseTo(0.0505 * 106.15 * Math.sqrt(112.68), within(0.1));
            });
  }

  @Test
  void a_device_stands_at_the_coupling_nearest_to_its_station() {
    LinePlan plan =
        plan("to", "2.5 NH female monitor", "flow", "200 gpm", "accessories", "valve at 170 ft");
    Layout.StationDevice valve = plan.layout().devices().get(0);
    assertThat(valve.atFt()).isEqualTo(150);
    assertThat(valve.askedFt()).isEqualTo(170);
    assertThat(plan.layout().run())
        .extracting(part -> part.item().orElse(""))
        .containsExactly("", "H25", "V", "H25", "");
    assertThat(plan.layout().run().get(1).count()).isEqualTo(3);
    assertThat(FirstLeg.sections(plan)).containsExactly(new SectionCount(50, 6));
    // 2 x 2² x 3 = 24 psi in the hose, and what the valve's body takes.
    assertThat(plan.hydraulics().adapterLossPsi()).isPositive();
    assertThat(plan.hydraulics().requiredSourcePsi())
        .isCloseTo(100 + 24 + plan.hydraulics().adapterLossPsi(), within(1e-9));
  }

  @Test
  void devices_of_one_station_stand_together_and_others_each_at_a_coupling_of_their_own() {
    LinePlan plan =
        plan(
            "to", "2.5 NH female monitor",
            "flow", "200 gpm",
            "accessories", "V at 160 ft, V at 160 ft, V at 140 ft");
    assertThat(plan.layout().devices())
        .extracting(Layout.StationDevice::atFt)
        .containsExactly(150.0, 200.0, 200.0);
    assertThat(plan.layout().run())
        .extracting(part -> part.item().orElse(""))
        .containsExactly("", "H25", "V", "H25", "V", "V", "H25", "");
  }

  @Test
  void lines_from_two_outlets_share_the_flow_and_meet_in_a_siamese() {
    LinePlan plan = plan("to", "4 Storz monitor", "flow", "400 gpm", "outlets", "2");
    assertThat(plan.feasible()).isTrue();
    assertThat(FirstLeg.lines(plan)).isEqualTo(2);
    assertThat(plan.layout().outlets()).isEqualTo(2);
    assertThat(quantity(plan, "H25")).isEqualTo(12);
    assertThat(quantity(plan, "Y")).isZero();
    assertThat(quantity(plan, "S")).isEqualTo(1);
    // Each carries 200 gpm: 2 x 2² x 3 = 24 psi.
    assertThat(plan.hydraulics().requiredSourcePsi()).isCloseTo(124, within(1e-9));
  }

  @Test
  void a_wye_or_siamese_that_nobody_sells_is_named_as_what_is_lacking() {
    assertThat(plan(with(WYED, "attack-lines", "3")).limitedBy().orElseThrow())
        .startsWith("wye: no three-outlet wye is sold for this use");
    assertThat(plan("to", "4 Storz monitor", "flow", "400 gpm", "outlets", "3").limitedBy())
        .hasValueSatisfying(why -> assertThat(why).startsWith("siamese: no "));
  }

  @Test
  void answers_that_do_not_go_with_a_wye_or_with_outlets_are_each_refused() {
    assertThat(
            refused(
                "to", "1.5 NH female nozzle",
                "flow", "100 gpm",
                "attack-lines", "5",
                "lines", "2",
                "friction-coefficient", "12",
                "owned", "2 x 50 ft 2.5 NH"))
        .containsExactlyInAnyOrder(
            "attack-lines", "lines", "friction-coefficient", "owned", "attack-length");
    assertThat(refused("to", "4 Storz", "flow", "1 gpm", "outlets", "2", "lines", "2"))
        .containsExactly("lines");
    assertThat(refused("to", "4 Storz", "flow", "1 gpm", "attack-size", "2.5 in"))
        .containsExactly("attack-size");
    assertThat(refused("to", "4 Storz", "flow", "1 gpm", "accessories", "valve at 300 ft"))
        .containsExactly("accessories");
  }

  private static List<String> refused(String... more) {
    List<String> fields = new ArrayList<>();
    assertThatThrownBy(() -> DemoCatalogue.job(answers(more)))
        .isInstanceOfSatisfying(
            BadInputException.class,
            e -> e.problems().stream().map(Problem::field).forEach(fields::add));
    return fields;
  }

  private static int quantity(LinePlan plan, String item) {
    return plan.items().stream()
        .filter(bought -> bought.item().equals(item))
        .mapToInt(Bill.Item::quantity)
        .sum();
  }

  private static String[] with(String[] answers, String... more) {
    List<String> all = new ArrayList<>(List.of(answers));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  @Test
  void a_valve_at_a_station_is_as_wide_as_the_couplings_around_it_where_one_is_sold() {
    SmallShop shop = shop();
    shop.part("v", ItemKind.VALVE, "1.5 NH female swivel", "1.5 NH male").at(100);
    shop.part("down", ItemKind.ADAPTER, "2.5 NH female swivel", "1.5 NH male").at(100);
    shop.part("up", ItemKind.ADAPTER, "1.5 NH female swivel", "2.5 NH male").at(100);
    String[] job =
        answers(
            "to", "2.5 NH female tank",
            "flow", "100 gpm",
            "size", "2.5 in",
            "accessories", "valve at 150 ft");

    assertThat(shop.plan(job).items()).extracting(Bill.Item::item).contains("V");
    job[job.length - 1] = "v at 150 ft";
    assertThat(shop.plan(job).items())
        .extracting(Bill.Item::item)
        .contains("v")
        .doesNotContain("V");
  }
}
