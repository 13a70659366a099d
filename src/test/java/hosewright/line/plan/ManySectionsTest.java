package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hosewright.catalogue.ItemKind;
import hosewright.job.Job;
import hosewright.line.model.Bill;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Reasoning;
import hosewright.line.model.SectionCount;
import hosewright.line.search.SmallShop;
import hosewright.thread.LocalThreads;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Long lines of hose that is sold in many lengths and jackets, which have billions of lays. */
final class ManySectionsTest {
  private static final List<Integer> LENGTHS_FT = List.of(10, 15, 25, 30, 50, 75, 100, 300);

  private final SmallShop shop = new SmallShop();

  @Test
  @Timeout(120)
  void two_miles_of_hose_in_eight_lengths_and_six_jackets_cost_what_the_best_length_costs() {
    for (int jacket = 0; jacket < 6; jacket++) {
      for (int lengthFt : LENGTHS_FT) {
        // Every section has its couplings, 30.00 a pair: the longer, the less a foot costs.
        hose(lengthFt, "J" + jacket, lengthFt * 200 + 3_000);
      }
    }

    LinePlan plan = plan("10560 ft");

    // 35 of 300 ft leave 60 ft, for which one of 75 ft costs less than 50 and 10.
    assertThat(sections(plan)).isEqualTo(Map.of(300.0, 35, 75.0, 1));
    assertThat(plan.total().getAmountMinorLong()).isEqualTo(35 * 63_000 + 18_000);
  }

  @Test
  @Timeout(120)
  void the_front_of_two_miles_in_eight_lengths_holds_the_line_with_the_fewest_sections() {
    LENGTHS_FT.forEach(lengthFt -> hose(lengthFt, "J", lengthFt * 200 + 3_000));

    List<LinePlan> front = shop.planner().front(job("10560 ft"), 7).plans();

    assertThat(front)
        .extracting(plan -> sections(plan).values().stream().mapToInt(n -> n).sum())
        .contains(36);
  }

  @Test
  @Timeout(120)
  void two_miles_beside_sections_of_the_buyers_own_are_planned_as_well() {
    LENGTHS_FT.forEach(lengthFt -> hose(lengthFt, "J", lengthFt * 200 + 3_000));

    LinePlan plan = shop.planner().plan(job("10560 ft", "owned", "8 x 40 ft 2.5 Storz"));

    // All 320 ft of theirs leave 10,240 ft: 34 of 300 ft and one of 50 ft.
    assertThat(sections(plan)).isEqualTo(Map.of(300.0, 34, 50.0, 1, 40.0, 8));
    assertThat(plan.total().getAmountMinorLong()).isEqualTo(34 * 63_000 + 13_000);
  }

  /** Where nothing costs anything, price leaves no line out: the fewest sections do. */
  @Test
  void goods_for_nothing_are_planned_without_a_look_at_every_line() {
    Money nothing = Money.zero(CurrencyUnit.USD);
    Planner free =
        new Planner(
            DemoCatalogue.get(),
            (item, quantity) -> Optional.of(nothing),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            LocalThreads.none());

    LinePlan plan =
        free.plan(
            DemoCatalogue.job(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH female nozzle",
                "length", "400 ft",
                "flow", "95 gpm",
                "need", "75 psi",
                "source-pressure", "150 psi",
                "size", "1.75 in",
                "use", "fire"));

    assertThat(plan.total()).isEqualTo(nothing);
    // Of five sections those that lose least: 425 ft cover the 420.
    assertThat(sections(plan)).isEqualTo(Map.of(100.0, 4, 25.0, 1));
    assertThat(plan.weighed().searched().plans()).isLessThan(1_000);
  }

  @Test
  void of_two_jackets_alike_the_first_is_laid_and_the_other_counted_among_what_was_left_out() {
    hose(50, "RED", 9_000);
    hose(50, "YEL", 9_000);

    Planner.Explained explained = shop.planner().explain(job("200 ft"));

    assertThat(explained.plan().items()).extracting(Bill.Item::item).contains("RED50");
    assertThat(explained.reasoning().considered().stock().leftOut())
        .containsExactly(
            new Reasoning.Count("no better than another section of its make and length", 1));
  }

  @Test
  void a_jacket_that_is_cheaper_from_ten_on_is_laid_where_ten_are_needed() {
    hose(50, "RED", 9_000);
    hose(50, "YEL", 9_500);
    shop.price("YEL50", 10, 8_000);

    assertThat(plan("400 ft").items()).extracting(Bill.Item::item).contains("RED50");
    assertThat(plan("600 ft").items()).extracting(Bill.Item::item).contains("YEL50");
  }

  @Test
  void a_cheaper_jacket_that_is_running_out_is_laid_as_far_as_it_goes() {
    hose(50, "RED", 9_000);
    shop.part("YEL50", ItemKind.HOSE, "2.5 Storz", "2.5 Storz")
        .hose(2.5, 50, "Series")
        .gasketsFitted()
        .discontinued(3)
        .at(8_500);

    LinePlan plan = plan("250 ft");

    assertThat(plan.items())
        .filteredOn(item -> item.item().endsWith("50"))
        .extracting(Bill.Item::quantity)
        .containsExactly(2, 3);
  }

  @Test
  void a_spare_for_a_longer_section_of_the_buyers_own_is_of_the_jacket_that_is_laid() {
    hose(25, "RED", 9_000);
    hose(25, "YEL", 9_500);
    shop.price("YEL25", 2, 3_000);

    LinePlan plan =
        shop.planner().plan(job("65 ft", "owned", "1 x 40 ft 2.5 Storz", "spare-sections", "1"));

    assertThat(plan.items())
        .filteredOn(item -> item.item().endsWith("25"))
        .extracting(Bill.Item::item, Bill.Item::quantity)
        .containsExactly(tuple("YEL25", 2));
  }

  @Test
  void the_rest_of_a_run_is_made_up_on_the_bench_beside_sections_bought_coupled() {
    hose(100, "J", 10_000);
    shop.part("BULK", ItemKind.BULK_HOSE).hose(2.5, 0, "Series").at(150);
    shop.part("COUPLING", ItemKind.COUPLING, "2.5 Storz").hose(2.5, 0, "").gasketsFitted().at(500);
    shop.part("RING", ItemKind.ATTACHMENT).hose(2.5, 0, "").at(50);
    shop.part("LABOUR", ItemKind.COUPLING_LABOUR).at(300);
    shop.part("TEST", ItemKind.PRESSURE_TEST).at(200);

    LinePlan plan = plan("420 ft");

    assertThat(sections(plan)).isEqualTo(Map.of(100.0, 4, 25.0, 1));
    // 26 ft of hose, two couplings with their rings and labour, one test.
    assertThat(plan.total().getAmountMinorLong())
        .isEqualTo(4 * 10_000 + 26 * 150 + 2 * (500 + 50 + 300) + 200);
    assertThat(plan.cautions()).anyMatch(caution -> caution.contains("made up"));
  }

  private void hose(int lengthFt, String jacket, int cents) {
    shop.part(jacket + lengthFt, ItemKind.HOSE, "2.5 Storz", "2.5 Storz")
        .hose(2.5, lengthFt, "Series")
        .gasketsFitted()
        .at(cents);
  }

  private LinePlan plan(String length) {
    return shop.planner().plan(job(length));
  }

  private static Job job(String length, String... more) {
    Stream<String> asked =
        Stream.of(
            "from", "2.5 Storz hydrant",
            "to", "2.5 Storz appliance",
            "length", length,
            "slack", "0 %",
            "flow", "20 gpm",
            "need", "10 psi");
    return DemoCatalogue.job(Stream.concat(asked, Stream.of(more)).toArray(String[]::new));
  }

  private static Map<Double, Integer> sections(LinePlan plan) {
    return FirstLeg.sections(plan).stream()
        .collect(Collectors.toMap(SectionCount::lengthFt, SectionCount::count));
  }
}
