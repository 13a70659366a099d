package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.ItemKind;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.line.search.SmallShop;
import hosewright.problem.BadInputException;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The rules of laying and joining a line, each in a shop just large enough to show it. */
class PlanningRulesTest {
  private final SmallShop shop = new SmallShop();

  private SmallShop.Part hose(String number, String ends) {
    return shop.part(number, ItemKind.HOSE, ends.split(" x ")).hose(1.5, 50, number);
  }

  private SmallShop.Part adapter(String number, String ends) {
    return shop.part(number, ItemKind.ADAPTER, ends.split(" x "));
  }

  /** A short run that one section of 50 ft covers, unless said otherwise. */
  private LinePlan plan(String from, String to, String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of("from", from, "to", to, "length", "40 ft", "flow", "30 gpm", "need", "10 psi"));
    answers.addAll(Arrays.asList(more));
    return shop.plan(answers.toArray(String[]::new));
  }

  private static Check check(LinePlan plan, String name) {
    return plan.checks().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> numbers(LinePlan plan) {
    return plan.items().stream().map(Bill.Item::item).toList();
  }

  private static Money usd(String amount) {
    return Money.parse("USD " + amount);
  }

  // ---- which way round

  @Test
  void hose_lies_with_its_females_towards_a_male_source() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(9_000);
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle");
    assertThat(plan.layout().run().get(1).upstream())
        .hasValueSatisfying(e -> assertThat(e.swivel()).isTrue());
    assertThat(FirstLeg.fittings(plan)).isEmpty();
  }

  @Test
  void hose_is_laid_the_other_way_round_between_a_female_source_and_a_male_appliance() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(9_000);
    adapter("DM", "1.5 NH male x 1.5 NH male").at(2_000);
    adapter("DF", "1.5 NH female swivel x 1.5 NH female swivel").at(2_000);
    LinePlan plan = plan("1.5 NH female pump", "1.5 NH male tank");
    assertThat(plan.layout().run().get(1).upstream().orElseThrow()).hasToString("1.5 NH male");
    assertThat(FirstLeg.fittings(plan)).isEmpty();
  }

  @Test
  void a_double_male_turns_the_line_where_source_and_appliance_are_both_female() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(9_000);
    adapter("DM", "1.5 NH male x 1.5 NH male").at(2_000);
    adapter("DF", "1.5 NH female swivel x 1.5 NH female swivel").at(100);
    LinePlan plan = plan("1.5 NH female pump", "1.5 NH female nozzle");
    assertThat(plan.feasible()).isTrue();
    assertThat(FirstLeg.fittings(plan)).containsExactly("1 x DM");
  }

  // ---- permanent joints, and turning

  @Test
  void a_permanent_joint_stands_at_the_pipe_with_its_sealant_and_nowhere_else() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(9_000);
    adapter("A", "1.5 NPT female x 1.5 NH male").at(2_000);
    shop.part("TAPE", ItemKind.SEALANT).at(300);
    LinePlan plan = plan("1.5 NPT male pipe", "1.5 NH female nozzle", "length", "80 ft");
    assertThat(plan.joints())
        .extracting(joint -> joint.fit().removable())
        .containsExactly(false, true, true, true);
    assertThat(plan.joints().get(0).fit().seal()).isEqualTo(Verdict.Seal.THREAD);
    assertThat(numbers(plan)).contains("TAPE");
  }

  @Test
  void sections_are_never_joined_for_good() {
    hose("PIPE-THREADED", "1.5 NPT female x 1.5 NPT male").at(5_000);
    assertThat(plan("1.5 NPT male pipe", "1.5 NPT female nozzle").feasible()).isTrue();
    assertThat(plan("1.5 NPT male pipe", "1.5 NPT female nozzle", "length", "80 ft").feasible())
        .isFalse();
  }

  @Test
  void rigid_ends_between_two_fixed_ones_cannot_be_made_up_but_a_swivel_or_a_nozzle_turns() {
    hose("RIGID", "1.5 NH female x 1.5 NH male").at(5_000);
    LinePlan fixed = plan("1.5 NH male pipe", "1.5 NH female tank");
    assertThat(fixed.feasible()).isFalse();
    assertThat(fixed.limitedBy())
        .hasValueSatisfying(w -> assertThat(w).startsWith("make-up order"));

    assertThat(plan("1.5 NH male pipe", "1.5 NH female nozzle").feasible()).isTrue();

    adapter("SWIVEL", "1.5 NH female swivel x 1.5 NH male").at(1_500);
    LinePlan swivelled = plan("1.5 NH male pipe", "1.5 NH female tank");
    assertThat(swivelled.feasible()).isTrue();
    assertThat(FirstLeg.fittings(swivelled)).containsExactly("1 x SWIVEL");
  }

  @Test
  void rigid_lines_side_by_side_close_a_ring_that_no_nozzle_turns() {
    hose("RIGID", "1.5 NH female x 1.5 NH male").at(5_000);
    shop.part("WYE", ItemKind.WYE, "1.5 NH female swivel", "1.5 NH male", "1.5 NH male").at(7_000);
    shop.part("SIAMESE", ItemKind.SIAMESE, "1.5 NH female", "1.5 NH female", "1.5 NH male")
        .at(7_000);
    LinePlan rigid = plan("1.5 NH male pump", "1.5 NH female nozzle", "lines", "2");
    assertThat(check(rigid, "make-up order").outcome()).isEqualTo(Check.Outcome.FAIL);

    adapter("SWIVEL", "1.5 NH female swivel x 1.5 NH male").at(1_500);
    LinePlan swivelled = plan("1.5 NH male pump", "1.5 NH female nozzle", "lines", "2");
    assertThat(swivelled.feasible()).isTrue();
    assertThat(FirstLeg.fittings(swivelled)).contains("2 x SWIVEL");
  }

  @Test
  void a_thread_known_only_by_name_is_planned_and_said_to_be_measured() {
    // Quebec's thread is listed by name; no published figures are held for it.
    hose("H", "2.5 QST female swivel x 2.5 QST male").at(9_000);
    LinePlan plan = plan("2.5 QST male hydrant", "2.5 QST female monitor", "length", "80 ft");
    assertThat(plan.feasible()).isTrue();
    assertThat(check(plan, "joints mate").outcome()).isEqualTo(Check.Outcome.WARN);
    assertThat(check(plan, "joints mate").note()).contains("measure");
  }

  // ---- lines side by side

  private void shopForTwoLines() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    shop.part("WYE", ItemKind.WYE, "1.5 NH female swivel", "1.5 NH male", "1.5 NH male").at(7_000);
    shop.part("SI", ItemKind.SIAMESE, "1.5 NH female swivel", "1.5 NH female swivel", "1.5 NH male")
        .at(7_000);
  }

  /** 1.5 in hose with C 24 (common practice, no source) takes 108 psi for 300 gpm in 50 ft. */
  private LinePlan thirsty(String... more) {
    List<String> answers = new ArrayList<>(List.of("flow", "300 gpm", "source-pressure", "90 psi"));
    answers.addAll(List.of(more));
    return plan("1.5 NH male pump", "1.5 NH female monitor", answers.toArray(String[]::new));
  }

  @Test
  void a_second_line_is_laid_where_one_cannot_carry_the_flow() {
    shopForTwoLines();
    LinePlan plan = thirsty();
    assertThat(plan.feasible()).isTrue();
    assertThat(FirstLeg.lines(plan)).isEqualTo(2);
  }

  @Test
  void a_second_line_is_only_advice_to_a_buyer_who_names_the_size() {
    shopForTwoLines();
    LinePlan plan = thirsty("size", "1.5 in");
    assertThat(plan.feasible()).isFalse();
    assertThat(FirstLeg.lines(plan)).isEqualTo(1);
    assertThat(plan.instead()).anyMatch(remedy -> remedy.startsWith("2 lines of 1.5 in hose"));
  }

  @Test
  void a_second_line_is_laid_where_it_is_asked_for() {
    shopForTwoLines();
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female monitor", "lines", "2");
    assertThat(FirstLeg.lines(plan)).isEqualTo(2);
    assertThat(FirstLeg.sections(plan)).containsExactly(new SectionCount(50, 2));
  }

  // ---- what can be had, and what it costs

  @Test
  void what_is_discontinued_is_sold_from_stock_only() {
    hose("OLD", "1.5 NH female swivel x 1.5 NH male").discontinued(2).at(1_000);
    hose("NEW", "1.5 NH female swivel x 1.5 NH male").at(9_000);
    LinePlan two = plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "80 ft");
    assertThat(numbers(two)).contains("OLD");
    assertThat(check(two, "discontinued items").outcome()).isEqualTo(Check.Outcome.WARN);

    LinePlan three = plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "130 ft");
    assertThat(three.feasible()).isTrue();
    assertThat(numbers(three)).contains("NEW").doesNotContain("OLD");
  }

  @Test
  void too_little_left_of_the_only_hose_is_said() {
    hose("OLD", "1.5 NH female swivel x 1.5 NH male").discontinued(2).at(1_000);
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "130 ft");
    assertThat(plan.feasible()).isFalse();
    assertThat(plan.limitedBy())
        .hasValueSatisfying(why -> assertThat(why).contains("not enough left in stock of OLD"));
  }

  @Test
  void a_price_break_beyond_the_stock_is_out_of_reach() {
    hose("OLD", "1.5 NH female swivel x 1.5 NH male").discontinued(2).at(1_000);
    shop.price("OLD", 3, 100);
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "80 ft");
    assertThat(plan.feasible()).isTrue();
    assertThat(plan.total()).isEqualTo(usd("20.00"));
  }

  @Test
  void more_is_bought_than_laid_where_a_price_break_makes_it_cheaper() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(1_000);
    shop.price("H", 3, 600);
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "80 ft");
    assertThat(plan.total()).isEqualTo(usd("18.00"));
    assertThat(plan.items().get(0).quantity()).isEqualTo(3);
    assertThat(plan.items().get(0).spare()).isEqualTo(1);
  }

  @Test
  void a_spare_section_asked_for_counts_towards_the_price_break_of_those_laid() {
    hose("A", "1.5 NH female swivel x 1.5 NH male").at(10_000);
    shop.price("A", 3, 5_000);
    hose("B", "1.5 NH female swivel x 1.5 NH male").at(4_000);
    LinePlan plan =
        plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "80 ft", "accessories", "A");
    // Three of A cost 150.00; two of B and one of A would cost 180.00.
    assertThat(plan.total()).isEqualTo(usd("150.00"));
  }

  @Test
  void the_gasket_is_the_one_that_is_cheapest_for_so_few() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").gasketsFitted().at(5_000);
    shop.part("BY-THE-BAG", ItemKind.GASKET, "1.5 NH female").at(100);
    shop.price("BY-THE-BAG", 5, 21);
    shop.part("SINGLE", ItemKind.GASKET, "1.5 NH female").at(90);
    assertThat(numbers(plan("1.5 NH male pump", "1.5 NH female nozzle")))
        .contains("SINGLE")
        .doesNotContain("BY-THE-BAG");
  }

  @Test
  void what_has_no_price_is_never_taken_for_the_cheapest() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    shop.part("W-UNPRICED", ItemKind.WRENCH).unpriced();
    shop.part("W", ItemKind.WRENCH).at(1_200);
    shop.part("B", ItemKind.BULK_HOSE).hose(1.5, 0, "B").at(10);
    shop.part("CF", ItemKind.COUPLING, "1.5 NH female swivel").hose(1.5, 0, "").at(10);
    shop.part("CM", ItemKind.COUPLING, "1.5 NH male").hose(1.5, 0, "").at(10);
    shop.part("RING", ItemKind.ATTACHMENT).hose(1.5, 0, "").unpriced();
    shop.part("LABOUR", ItemKind.COUPLING_LABOUR).at(10);
    shop.part("TEST", ItemKind.PRESSURE_TEST).at(10);
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", "accessories", "wrench");
    assertThat(numbers(plan)).contains("H", "W").doesNotContain("B", "W-UNPRICED");
  }

  // ---- pressure

  @Test
  void hose_holds_less_when_it_is_warm() {
    hose("H", "1.5 NH female swivel x 1.5 NH male")
        .working(250)
        .derated(100, 250)
        .derated(150, 120)
        .at(5_000);
    String[] warm = {"source-pressure", "200 psi", "temperature", "140 F"};
    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", warm);
    assertThat(plan.feasible()).isFalse();
    assertThat(check(plan, "hose working pressure").limit()).isEqualTo(120);
    String[] cool = {"source-pressure", "200 psi", "temperature", "60 F"};
    assertThat(plan("1.5 NH male pump", "1.5 NH female nozzle", cool).feasible()).isTrue();
  }

  @Test
  void hose_works_at_its_service_test_pressure_over_one_point_one_at_the_most() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").working(400).serviceTest(220).at(5_000);
    // Service test pressure is 110 % of the highest operating pressure (trade press on NFPA 1961
    // markings): 220 / 1.1 = 200.
    LinePlan at = plan("1.5 NH male pump", "1.5 NH female nozzle", "source-pressure", "200 psi");
    assertThat(at.feasible()).isTrue();
    LinePlan over = plan("1.5 NH male pump", "1.5 NH female nozzle", "source-pressure", "201 psi");
    assertThat(over.feasible()).isFalse();
    assertThat(check(over, "service test pressure").limit()).isCloseTo(200, within(1e-9));
  }

  @Test
  void a_main_is_not_drawn_below_20_psi() {
    shop.part("LDH", ItemKind.HOSE, "5 Storz", "5 Storz").hose(5, 50, "LDH").at(50_000);
    String[] test = {"static", "60 psi", "residual", "30 psi", "at", "500 gpm", "need", "5 psi"};
    // NFPA 291, 4.2.1-4.2.2 (20 psi) and its flow formula, exponent 0.54:
    // 500 x (40/30)^0.54 = 584 gpm leaves 20 psi.
    LinePlan within = plan("5 Storz hydrant", "5 Storz tank", with(test, "flow", "583 gpm"));
    assertThat(within.feasible()).isTrue();
    assertThat(check(within, "hydrant residual").value()).isCloseTo(20, within(0.2));
    LinePlan beyond = plan("5 Storz hydrant", "5 Storz tank", with(test, "flow", "585 gpm"));
    assertThat(beyond.feasible()).isFalse();
    assertThat(beyond.limitedBy())
        .hasValueSatisfying(why -> assertThat(why).startsWith("hydrant residual"));
  }

  private static String[] with(String[] answers, String field, String answer) {
    List<String> all = new ArrayList<>(List.of(answers));
    all.addAll(List.of(field, answer));
    return all.toArray(String[]::new);
  }

  @Test
  void an_adapter_must_stand_what_it_sees_where_it_stands() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    adapter("WEAK", "2.5 NH female swivel x 1.5 NH male").working(100).at(1_000);
    adapter("STRONG", "2.5 NH female swivel x 1.5 NH male").working(300).at(9_000);
    LinePlan low = plan("2.5 NH male pump", "1.5 NH female nozzle", "source-pressure", "90 psi");
    assertThat(numbers(low)).contains("WEAK");
    LinePlan high = plan("2.5 NH male pump", "1.5 NH female nozzle", "source-pressure", "190 psi");
    assertThat(numbers(high)).contains("STRONG").doesNotContain("WEAK");
  }

  @Test
  void an_adapter_at_the_top_of_a_fall_sees_less_than_the_appliance_needs() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    adapter("WEAK", "2.5 NH female swivel x 1.5 NH male").working(60).at(1_000);
    LinePlan plan =
        plan(
            "2.5 NH male pump",
            "1.5 NH female nozzle",
            "length",
            "180 ft",
            "rise",
            "-160 ft",
            "need",
            "80 psi",
            "flow",
            "10 gpm");
    // A fall of 160 ft brings 160 x 0.434 = 69 of the 80 psi.
    assertThat(plan.feasible()).isTrue();
    assertThat(numbers(plan)).contains("WEAK");
  }

  @Test
  void a_fall_that_brings_more_than_is_needed_is_no_failure() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    adapter("A", "2.5 NH female swivel x 1.5 NH male").at(1_000);
    LinePlan plan =
        plan("2.5 NH male tank", "1.5 NH female nozzle", "length", "180 ft", "rise", "-160 ft");
    assertThat(plan.feasible()).isTrue();
    assertThat(check(plan, "pressure above zero").outcome()).isEqualTo(Check.Outcome.PASS);
    assertThat(check(plan, "delivered pressure").note()).contains("the fall alone");
  }

  @Test
  void a_line_that_needs_more_than_any_source_gives_is_still_an_answer() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    LinePlan plan =
        plan("1.5 NH male pump", "1.5 NH female nozzle", "length", "900 ft", "flow", "400 gpm");
    assertThat(plan.hydraulics().requiredSourcePsi()).isGreaterThan(2_000);
    assertThat(check(plan, "delivered pressure").note()).contains("the source must hold");
  }

  @Test
  void an_adapter_nobody_stocks_is_named_by_its_ends_and_what_it_must_stand() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").working(250).at(5_000);
    LinePlan stated =
        plan("2.5 NH male pump", "1.5 NH female nozzle", "source-pressure", "140 psi");
    assertThat(stated.bill().unpriced())
        .anyMatch(
            p -> p.words().contains("2.5 NH female swivel x 1.5 NH male, rated 140 psi or more"));
    // With no source stated, whatever the hose may carry may stand on the adapter too.
    LinePlan open = plan("2.5 NH male pump", "1.5 NH female nozzle");
    assertThat(open.bill().unpriced())
        .anyMatch(part -> part.words().contains("rated 250 psi or more"));
  }

  // ---- what is refused

  @Test
  void drinking_water_without_backflow_protection_is_refused_with_the_remedy() {
    String[] job = {
      "from",
      "2.5 NH male hydrant",
      "to",
      "1.5 NPSH female tank",
      "length",
      "200 ft",
      "flow",
      "40 gpm",
      "need",
      "20 psi",
      "source-pressure",
      "90 psi",
      "use",
      "drinking"
    };
    LinePlan plan = DemoCatalogue.plan(job);
    assertThat(plan.feasible()).isFalse();
    assertThat(plan.limitedBy())
        .hasValueSatisfying(why -> assertThat(why).startsWith("backflow protection"));
    assertThat(plan.instead()).anyMatch(remedy -> remedy.startsWith("accessories: backflow"));
    assertThat(DemoCatalogue.plan(with(job, "accessories", "backflow")).feasible()).isTrue();
  }

  @Test
  void a_rise_beyond_the_length_of_the_hose_is_refused() {
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> plan("1.5 NH male pump", "1.5 NH female nozzle", "rise", "43 ft"))
        .satisfies(e -> assertThat(e.problems()).extracting("field").containsExactly("rise"));
  }

  @Test
  void an_unknown_accessory_is_refused_with_the_nearest_one() {
    hose("H", "1.5 NH female swivel x 1.5 NH male").at(5_000);
    assertThatExceptionOfType(BadInputException.class)
        .isThrownBy(() -> plan("1.5 NH male pump", "1.5 NH female nozzle", "accessories", "wrnch"))
        .satisfies(
            e -> {
              assertThat(e.problems().get(0).field()).isEqualTo("accessories");
              assertThat(e.problems().get(0).nearest()).isEqualTo("wrench");
            });
  }

  // ---- what is asked for besides

  /** Else the other colour is laid, which costs less at every quantity. */
  @Test
  void a_section_asked_for_besides_brings_the_one_laid_to_its_price_break() {
    shop.part("RED", ItemKind.HOSE, "1.5 NH female swivel", "1.5 NH male")
        .hose(1.5, 50, "H")
        .at(10_000);
    shop.price("RED", 2, 5_000);
    shop.part("YELLOW", ItemKind.HOSE, "1.5 NH female swivel", "1.5 NH male")
        .hose(1.5, 50, "H")
        .at(6_000);
    shop.price("YELLOW", 2, 5_000);

    LinePlan plan = plan("1.5 NH male pump", "1.5 NH female nozzle", "accessories", "RED");

    assertThat(numbers(plan)).containsExactly("RED");
    assertThat(plan.total()).isEqualTo(usd("100.00"));
  }
}
