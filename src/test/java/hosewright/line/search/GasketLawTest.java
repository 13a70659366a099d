package hosewright.line.search;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.line.model.Bill;
import hosewright.line.model.Joint;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.DemoCatalogue;
import hosewright.thread.End;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Each gasketed end of a joint has one gasket, and a gasket is billed where nobody brings it. */
class GasketLawTest {
  @Test
  @Tag("long")
  void every_gasket_billed_is_one_that_no_part_of_its_joint_brings_over_400_random_plans() {
    holds(400, seed -> DemoCatalogue.plan(RandomJobs.answers(seed)));
  }

  /** Of plans of random jobs, the first so many. */
  static void holds(int jobs, IntFunction<LinePlan> plans) {
    int told = 0;
    int withMadeUp = 0;
    for (int seed = 0; seed < jobs; seed++) {
      LinePlan plan = plans.apply(seed);
      if (!plan.layout().joints().isEmpty()) {
        joint_by_joint("seed " + seed, plan);
        told++;
        withMadeUp += plan.layout().run().stream().anyMatch(part -> part.isMadeUp()) ? 1 : 0;
      }
    }
    assertThat(told).isGreaterThan(jobs * 9 / 10);
    // Fire hose is bought coupled where it is sold so, which leaves few made up.
    assertThat(withMadeUp).isPositive();
  }

  @Test
  void a_section_made_up_with_a_gasketed_swivel_is_billed_one_spare_of_its_kind_and_no_more() {
    LinePlan plan =
        DemoCatalogue.plan(
            "from", "5 Storz pump",
            "to", "2.5 NH female appliance",
            "length", "175 ft",
            "flow", "395 gpm",
            "need", "150 psi",
            "source-pressure", "200 psi",
            "rise", "10 ft");

    assertThat(plan.layout().run()).anyMatch(part -> part.isMadeUp());
    joint_by_joint("the issue's own", plan);
    assertThat(plan.bill().gaskets().bought()).isZero();
  }

  private static void joint_by_joint(String which, LinePlan plan) {
    Map<String, Integer> all = new TreeMap<>();
    Map<String, Integer> lacking = new TreeMap<>();
    for (Joint joint : plan.layout().joints()) {
      int times = joint.count() * lines(plan, joint);
      for (Joint.Side side : new Joint.Side[] {joint.upstream(), joint.downstream()}) {
        if (side.end().carriesGasket()) {
          String kind = kind(side.end());
          all.merge(kind, times, Integer::sum);
          lacking.merge(kind, brings(plan, side) ? 0 : times, Integer::sum);
        }
      }
    }
    Map<String, Integer> expected = new TreeMap<>();
    // Common practice, no source: a tenth of each kind as spares, one at the least.
    all.forEach((kind, n) -> expected.put(kind, lacking.get(kind) + Math.max(1, (n + 9) / 10)));
    Map<String, Integer> billed = new TreeMap<>();
    for (Bill.Item line : plan.items()) {
      Item item = DemoCatalogue.get().item(line.item()).orElseThrow();
      if (item.kind() == ItemKind.GASKET) {
        billed.merge(kind(item.ends().get(0)), line.quantity() - line.spare(), Integer::sum);
      }
    }
    plan.bill().unpriced().stream()
        .filter(missing -> missing.what().startsWith("gasket for "))
        .forEach(
            missing ->
                billed.merge(
                    kind(End.parse(missing.what().substring("gasket for ".length()))),
                    missing.quantity(),
                    Integer::sum));

    assertThat(billed).as(which).isEqualTo(expected);
    assertThat(plan.bill().gaskets().bought())
        .as(which)
        .isEqualTo(lacking.values().stream().mapToInt(n -> n).sum());
  }

  private static String kind(End end) {
    return end.sizeAndFamily();
  }

  private static int lines(LinePlan plan, Joint joint) {
    return plan.layout().legs().stream()
        .filter(leg -> leg.name().equals(joint.leg()))
        .mapToInt(Leg::lines)
        .findFirst()
        .orElseThrow();
  }

  /** Whether the part on a side has its gasket: the buyer's has, and an item says so of itself. */
  private static boolean brings(LinePlan plan, Joint.Side side) {
    Optional<Item> item = DemoCatalogue.get().item(side.item());
    if (item.isEmpty()) {
      return side.part().indexOf("sourced") < 0;
    }
    return item.get().kind() == ItemKind.BULK_HOSE
        ? couplings(plan).anyMatch(c -> c.ends().get(0).equals(side.end()) && c.comesWithGaskets())
        : item.get().comesWithGaskets();
  }

  private static Stream<Item> couplings(LinePlan plan) {
    return plan.items().stream()
        .map(line -> DemoCatalogue.get().item(line.item()).orElseThrow())
        .filter(item -> item.kind() == ItemKind.COUPLING);
  }
}
