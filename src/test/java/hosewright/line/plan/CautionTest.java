package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.job.Job;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A caution is a row: when it goes with a plan, and what it says. */
final class CautionTest {
  private static final String MEASURE =
      "A thread with local or unpublished dimensions is planned by its name: measure the male end"
          + " before ordering.";

  private static LinePlan plan(String... more) {
    List<String> answers =
        new ArrayList<>(
            List.of(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH nozzle",
                "length", "100 ft",
                "flow", "95 gpm",
                "need", "50 psi"));
    answers.addAll(List.of(more));
    return DemoCatalogue.plan(answers.toArray(String[]::new));
  }

  @Test
  void a_thread_known_by_its_name_alone_is_to_be_measured_whatever_its_family() {
    LinePlan plan =
        plan(
            "from", "8 NH male hydrant",
            "to", "8 NH female",
            "owned", "3 x 50 ft 8 NH tested 300 psi");

    assertThat(plan.checks())
        .filteredOn(check -> check.id() == CheckId.JOINTS_MATE)
        .allMatch(check -> check.outcome() == Check.Outcome.WARN);
    assertThat(plan.cautions()).contains(MEASURE);
  }

  @Test
  void threads_with_published_figures_need_no_measuring() {
    assertThat(plan().cautions()).doesNotContain(MEASURE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "always                                   | true",
        "use is fire                              | true",
        "use is not fire                          | false",
        "fluid is water                           | true",
        "temperature over 110 F                   | true",
        "temperature over 140 F                   | false",
        "temperature under 50 C                   | true",
        "need over 50 psi                         | false",
        "lift is given                            | false",
        "lift is open                             | true",
        "lift over 1 ft                           | false",
        "accessories includes ramp                | true",
        "accessories includes valve               | false",
        "outlets is 2                             | false",
        "stock-only is yes                        | true",
        "source is hydrant                        | true",
        "source is pump or appliance is nozzle    | true",
        "use is fire and lift is given            | false",
        "lift is given and use is fire or source is hydrant | true",
        "check air-gap is shown                   | false"
      })
  void a_condition_says_what_it_reads_like(String when, boolean holds) {
    Job job =
        DemoCatalogue.job(
            "from", "2.5 NH male hydrant",
            "to", "1.5 NH nozzle",
            "length", "100 ft",
            "flow", "95 gpm",
            "need", "50 psi",
            "use", "fire",
            "temperature", "115 F",
            "stock-only", "yes",
            "accessories", "ramp, wrench");
    // None of these asks for what was planned.
    PlanFacts.Planned planned = PlanFacts.Planned.alone(job, null, List.of());

    assertThat(When.read("when", when).test(planned)).isEqualTo(holds);
  }

  @Test
  void what_is_usual_counts_as_the_answer_of_a_question_left_open() {
    PlanFacts.Planned planned =
        PlanFacts.Planned.alone(
            DemoCatalogue.job(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH nozzle",
                "length", "100 ft",
                "flow", "95 gpm",
                "need", "50 psi"),
            null,
            List.of());

    assertThat(When.read("when", "use is water").test(planned)).isTrue();
    assertThat(When.read("when", "slack over 4 %").test(planned)).isTrue();
    assertThat(When.read("when", "temperature under 200 F").test(planned)).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hydrent                      | hydrent                 | a clause such as",
        "hose is made                 | hose is made            | 'hose' is none of the facts",
        "temprature over 110 F        | temprature over 110 F   | Did you mean 'temperature'?",
        "temperature over 110         | 110                     | give a temperature",
        "use is firee                 | firee                   | Did you mean 'fire'?",
        "source is hydrent            | hydrent                 | Did you mean 'hydrant'?",
        "check air-gup warns          | air-gup                 | Did you mean 'air-gap'?",
        "use over fire                | use over fire           | use is no figure to compare",
        "reaktion is known            | reaktion is known       | Did you mean 'reaction'?",
        "always and                   | always and              | a clause such as",
        "use is fire or               | fire or                 | Did you mean 'fire'?"
      })
  void a_row_that_says_nothing_known_is_refused_by_its_line(
      String when, String value, String allowed) {
    assertThatThrownBy(() -> Caution.of(7, when, "Take care."))
        .isInstanceOf(BadInputException.class)
        .hasMessageStartingWith("line/cautions.csv line 7 when ")
        .hasMessageContaining(value)
        .hasMessageContaining(allowed);
  }

  @Test
  void a_sentence_with_an_unknown_figure_is_refused() {
    assertThatThrownBy(() -> Caution.of(3, "always", "It surges by {surg}."))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("line/cautions.csv line 3 text cannot be '{surg}'")
        .hasMessageContaining("Did you mean 'surge'?");
  }

  @Test
  void a_sentence_may_hold_a_figure_of_the_plan_or_an_answer_of_the_job() {
    assertThat(plan("accessories", "ramp").cautions())
        .anyMatch(caution -> caution.matches("Filled, the hose holds \\d+ gal of water: .*"));
    PlanFacts.Planned planned =
        PlanFacts.Planned.alone(
            DemoCatalogue.job(
                "from", "2.5 NH male hydrant",
                "to", "1.5 NH nozzle",
                "length", "30.48 m",
                "flow", "95 gpm",
                "need", "50 psi"),
            null,
            List.of());
    assertThat(Caution.of(2, "length over 50 ft", "Walk {length} and {slack}.").told(planned))
        .isEqualTo("Walk 100 ft and 5 %.");
  }
}
