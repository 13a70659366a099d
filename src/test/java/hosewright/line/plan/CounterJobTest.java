package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.FirstLeg;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Joint;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.line.model.SectionCount;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The question at the counter: a 2.5 NH hydrant outlet, a 1.5 NH nozzle, 400 ft between them. */
final class CounterJobTest {
  private static LinePlan plan(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH nozzle",
                "length", "400 ft",
                "flow", "150 gpm",
                "need", "50 psi",
                "section", "50 ft"));
    answers.addAll(List.of(more));
    return DemoCatalogue.plan(answers.toArray(String[]::new));
  }

  @Test
  void four_hundred_feet_and_five_percent_take_nine_sections_of_fifty() {
    LinePlan plan = plan("size", "1.75 in");
    assertThat(FirstLeg.hose(plan).neededFt()).isCloseTo(420, within(1e-9));
    assertThat(FirstLeg.sections(plan)).containsExactly(new SectionCount(50, 9));
    assertThat(FirstLeg.hose(plan).laidFt()).isEqualTo(450);
  }

  @Test
  void hose_of_one_and_three_quarters_carries_couplings_of_one_and_a_half() {
    LinePlan plan = plan("size", "1.75 in");
    assertThat(FirstLeg.hose(plan).sizeIn()).isEqualTo(1.75);
    assertThat(FirstLeg.hose(plan).couplingSizeIn()).isEqualTo(1.5);
  }

  @Test
  void with_small_couplings_the_reducer_stands_at_the_hydrant() {
    List<Part> run = plan("size", "1.5 in", "hose-thread", "NH").layout().run();
    assertThat(run.get(1).upstream().orElseThrow().toString()).startsWith("2.5 NH female");
    assertThat(run.get(1).downstream().orElseThrow()).hasToString("1.5 NH male");
    assertThat(run.get(run.size() - 2).count()).isEqualTo(9);
  }

  @Test
  void with_large_couplings_the_reducer_stands_at_the_nozzle() {
    List<Part> run = plan("size", "2.5 in", "hose-thread", "NH").layout().run();
    assertThat(run.get(1).count()).isEqualTo(9);
    Part reducer = run.get(run.size() - 2);
    assertThat(reducer.upstream().orElseThrow().toString()).startsWith("2.5 NH female");
    assertThat(reducer.downstream().orElseThrow()).hasToString("1.5 NH male");
  }

  @Test
  void every_joint_is_listed_and_mates_on_a_gasket_that_comes_apart() {
    LinePlan plan = plan("size", "1.75 in");
    // Hydrant to reducer, reducer to hose, eight between nine sections, hose to nozzle.
    assertThat(plan.joints().stream().mapToInt(Joint::count).sum()).isEqualTo(11);
    assertThat(plan.joints())
        .allMatch(joint -> joint.fit().verdict() == Verdict.Outcome.MATES)
        .allMatch(joint -> joint.fit().seal() == Verdict.Seal.GASKET)
        .allMatch(joint -> joint.fit().removable());
  }

  @Test
  void each_female_that_is_bought_has_its_gasket_and_each_size_a_spare() {
    Bill.Gaskets gaskets = plan("size", "1.75 in").bill().gaskets();
    // Nine sections and the reducer come fitted; one spare each of 1.5 NH and 2.5 NH.
    assertThat(gaskets.fitted() + gaskets.bought()).isEqualTo(10);
    assertThat(gaskets.spare()).isEqualTo(2);
  }

  @Test
  void friction_is_the_coefficient_law_and_adapter_loss_stands_apart() {
    Hydraulics hydraulics = plan("size", "1.75 in", "friction-coefficient", "15.5").hydraulics();
    // C (Q/100)^2 (L/100) with C 15.5 (common practice, no source): 15.5 x 2.25 x 4.5 = 156.9 psi.
    assertThat(hydraulics.frictionLossPsi()).isCloseTo(156.9, within(0.05));
    assertThat(hydraulics.adapterLossPsi()).isPositive();
    assertThat(hydraulics.requiredSourcePsi())
        .isCloseTo(50 + hydraulics.frictionLossPsi() + hydraulics.adapterLossPsi(), within(1e-9));
  }

  @Test
  void a_source_too_weak_for_it_is_an_answer_that_says_what_would_do() {
    LinePlan plan = plan("size", "1.75 in", "source-pressure", "150 psi");
    assertThat(plan.feasible()).isFalse();
    String required = String.format("%.1f psi", plan.hydraulics().requiredSourcePsi());
    assertThat(plan.limitedBy()).hasValueSatisfying(why -> assertThat(why).contains(required));
    assertThat(plan.instead())
        .anyMatch(remedy -> remedy.startsWith("2.5 in hose"))
        .anyMatch(remedy -> remedy.startsWith("2 lines of 1.75 in hose"))
        .anyMatch(remedy -> remedy.contains("a source that holds " + required));
  }

  @Test
  void what_it_says_would_do_instead_does() {
    LinePlan stronger = plan("size", "1.75 in", "source-pressure", "210 psi");
    assertThat(stronger.feasible()).isTrue();
    LinePlan two = plan("size", "1.75 in", "source-pressure", "150 psi", "lines", "2");
    assertThat(two.feasible()).isTrue();
    assertThat(FirstLeg.lines(two)).isEqualTo(2);
    assertThat(FirstLeg.sections(two)).containsExactly(new SectionCount(50, 18));
  }

  @Test
  void with_the_size_left_open_the_cheapest_size_that_passes_wins_and_the_losers_say_why() {
    LinePlan plan = plan("source-pressure", "150 psi");
    assertThat(plan.feasible()).isTrue();
    assertThat(plan.alternatives())
        .filteredOn(LinePlan.Alternative::feasible)
        .allMatch(other -> !other.total().isLessThan(plan.total()));
    assertThat(plan.alternatives()).allMatch(other -> !other.why().isBlank());
  }

  @Test
  void fire_use_takes_only_hose_marked_to_the_fire_hose_standard() {
    LinePlan plan = plan("use", "fire");
    assertThat(plan.checks())
        .anyMatch(c -> c.name().equals("fire hose mark") && c.outcome() == Check.Outcome.PASS);
    plan.layout().run().stream()
        .filter(part -> part.count() > 1)
        .map(part -> DemoCatalogue.get().item(part.item().orElse("")).orElseThrow())
        .forEach(hose -> assertThat(hose.markedTo()).startsWith("NFPA 1961"));
  }
}
