package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.catalogue.Item;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.problem.BadInputException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The terms a buyer may set besides the line, on the demo catalogue. */
class TermsTest {
  private static final String[] JOB = {
    "from", "2.5 NH male hydrant",
    "to", "2.5 NH female monitor",
    "length", "400 ft",
    "flow", "250 gpm",
    "need", "100 psi",
    "source-pressure", "180 psi",
    "use", "fire",
    "date", "2026-11-02"
  };

  private static LinePlan plan(String... terms) {
    return DemoCatalogue.plan(
        Stream.concat(Arrays.stream(JOB), Arrays.stream(terms)).toArray(String[]::new));
  }

  private static Check check(LinePlan plan, String name) {
    return plan.checks().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void budget_below_the_cheapest_line_that_works_is_no_plan_and_says_what_it_costs() {
    LinePlan free = plan();
    LinePlan plan = plan("budget", "900 USD");
    assertThat(plan.feasible()).isFalse();
    assertThat(plan.total()).isEqualTo(free.total());
    assertThat(plan.limitedBy().orElseThrow())
        .startsWith("budget")
        .contains(free.total().getAmount().toPlainString());
    assertThat(plan("budget", free.total().getAmount() + " USD").feasible()).isTrue();
  }

  @Test
  void budget_in_another_currency_is_refused() {
    assertThatThrownBy(() -> plan("budget", "900 EUR"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("USD");
  }

  @Test
  void stock_only_buys_nothing_that_is_not_on_the_shelf() {
    LinePlan plan = plan("stock-only", "yes");
    assertThat(plan.feasible()).isTrue();
    for (Bill.Item bought : plan.items()) {
      Item item = DemoCatalogue.get().item(bought.item()).orElseThrow();
      if (!item.kind().isWork()) {
        assertThat(item.stocking().onHand())
            .as(bought.item())
            .isGreaterThanOrEqualTo(bought.quantity());
      }
    }
  }

  @Test
  void what_is_bought_for_a_day_is_on_the_shelf_or_comes_in_time() {
    LinePlan plan = plan("deliver-by", "2026-11-20");
    assertThat(plan.feasible()).isTrue();
    for (Bill.Item bought : plan.items()) {
      Item item = DemoCatalogue.get().item(bought.item()).orElseThrow();
      boolean onShelf = item.stocking().onHand() >= bought.quantity();
      assertThat(item.kind().isWork() || onShelf || item.stocking().leadDays() <= 18)
          .as(bought.item())
          .isTrue();
    }
  }

  @Test
  void day_before_the_prices_is_refused() {
    assertThatThrownBy(() -> plan("deliver-by", "2026-11-01"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("deliver-by");
  }

  @Test
  void owned_sections_are_laid_and_only_what_is_missing_is_bought() {
    LinePlan all = plan();
    LinePlan plan = plan("owned", "4 x 50 ft 2.5 NH tested 250 psi marked fire");
    assertThat(plan.feasible()).isTrue();
    assertThat(plan.total().isLessThan(all.total())).isTrue();
    assertThat(plan.layout().ownSections()).containsExactly(new SectionCount(50, 4));
    // 420 ft are needed and 200 ft are there: of the usual lengths 225 ft are the least to buy.
    assertThat(FirstLeg.hose(plan).laidFt() - 200).isEqualTo(225);
    assertThat(check(plan, "customer's own hose").outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void owned_hose_of_unknown_rating_is_used_with_a_warning_that_says_what_to_test_it_to() {
    LinePlan plan = plan("owned", "4 x 50 ft 2.5 NH");
    Check own = check(plan, "customer's own hose");
    assertThat(own.outcome()).isEqualTo(Outcome.WARN);
    // 180 psi stands on it when shut, and the service test is 1.1 times the highest pressure.
    assertThat(own.note()).contains("198 psi");
  }

  @Test
  void owned_hose_that_covers_the_run_leaves_no_hose_to_buy() {
    LinePlan plan = plan("owned", "9 x 50 ft 2.5 NH tested 250 psi marked fire");
    assertThat(plan.items()).allSatisfy(item -> assertThat(item.item()).startsWith("G-"));
    assertThat(check(plan, "customer's own hose").outcome()).isEqualTo(Outcome.PASS);
  }

  /** 180 psi stands on the line when shut: a test at 150 psi allows 150 / 1.1. */
  @Test
  void owned_hose_tested_too_low_is_no_plan() {
    LinePlan plan = plan("owned", "4 x 50 ft 2.5 NH tested 150 psi");
    assertThat(plan.feasible()).isFalse();
    assertThat(plan.limitedBy().orElseThrow()).startsWith("service test pressure");
    assertThat(plan.instead()).anyMatch(advice -> advice.startsWith("new hose throughout"));
  }

  @Test
  void owned_hose_not_known_to_be_marked_for_it_carries_no_drinking_water() {
    LinePlan plan =
        DemoCatalogue.plan(
            "from", "2.5 NH male hydrant",
            "to", "2.5 NH female tank",
            "length", "100 ft",
            "flow", "50 gpm",
            "need", "10 psi",
            "use", "drinking",
            "accessories", "backflow",
            "owned", "1 x 50 ft 2.5 NH");
    assertThat(plan.layout().ownSections()).isEmpty();
  }

  @Test
  void spare_sections_are_bought_and_not_laid() {
    LinePlan plan = plan("spare-sections", "2");
    assertThat(FirstLeg.hose(plan).laidFt()).isEqualTo(FirstLeg.hose(plan()).laidFt());
    assertThat(plan.total().isGreaterThan(plan().total())).isTrue();
    assertThat(plan.bill().spares()).hasSize(1);
    assertThat(plan.bill().spares().get(0).count()).isEqualTo(2);
  }

  @Test
  void no_section_weighs_more_than_the_crew_can_carry() {
    LinePlan plan = plan("section-weight", "40 lb", "size", "2.5 in");
    assertThat(FirstLeg.sections(plan)).allSatisfy(s -> assertThat(s.lengthFt()).isLessThan(100));
    assertThat(FirstLeg.sections(plan())).anySatisfy(s -> assertThat(s.lengthFt()).isEqualTo(100));
  }

  /** Every line lacks them: looking at all of them for one that does not would never end. */
  @Test
  void more_spanners_than_there_are_keep_no_line_from_being_the_cheapest() {
    String[] asked = {"accessories", "900 x W-SPAN-15-3", "stock-only", "yes"};
    LinePlan lacking = plan(asked);

    assertThat(lacking.feasible()).isFalse();
    assertThat(lacking.limitedBy().orElseThrow())
        .startsWith("in stock: ")
        .contains("900 of W-SPAN-15-3");
    LinePlan enough = plan("accessories", "1 x W-SPAN-15-3", "stock-only", "yes");
    assertThat(enough.feasible()).isTrue();
    assertThat(FirstLeg.sections(lacking)).isEqualTo(FirstLeg.sections(enough));
  }

  @Test
  void several_sizes_may_be_allowed() {
    LinePlan plan = plan("size", "3 in, 4 in");
    assertThat(FirstLeg.hose(plan).sizeIn()).isIn(3.0, 4.0);
    assertThat(plan.alternatives())
        .allSatisfy(other -> assertThat(List.of(3.0, 4.0)).contains(other.hose().sizeIn()));
  }

  @Test
  void device_stands_at_the_end_it_is_asked_for() {
    LinePlan plan = plan("accessories", "gauge at appliance, valve at source");
    List<String> kinds =
        plan.layout().run().stream()
            .map(part -> DemoCatalogue.get().item(part.item().orElse("")))
            .map(item -> item.map(i -> i.kind().word()).orElse(""))
            .toList();
    int lastHose = Math.max(kinds.lastIndexOf("hose"), kinds.lastIndexOf("bulk-hose"));
    assertThat(kinds.indexOf("valve")).isBetween(0, lastHose);
    assertThat(kinds.indexOf("gauge")).isGreaterThan(lastHose);
  }

  @Test
  void each_term_that_cannot_be_read_is_named() {
    assertThatThrownBy(
            () ->
                plan(
                    "budget", "900",
                    "stock-only", "maybe",
                    "spare-sections", "x",
                    "section-weight", "heavy",
                    "owned", "some hose",
                    "accessories", "valve at halfway"))
        .isInstanceOfSatisfying(
            BadInputException.class,
            e ->
                assertThat(e.problems())
                    .extracting(problem -> problem.field())
                    .contains(
                        "budget",
                        "stock-only",
                        "spare-sections",
                        "section-weight",
                        "owned",
                        "accessories"));
  }
}
