package hosewright.line.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.job.SoughtFlow;
import hosewright.job.question.JobField;
import hosewright.thread.LocalThreads;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Flows that nobody names, because a nozzle and a source between them decide. */
class SoughtFlowTest {
  private static final Planner PLANNER =
      new Planner(
          DemoCatalogue.get(),
          DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
          DemoCatalogue.DATE,
          CurrencyUnit.USD,
          LocalThreads.none());

  private static final Map<String, String> LINE =
      Map.of(
          "from", "2.5 NH male pump",
          "to", "1.5 NH nozzle",
          "length", "200 ft",
          "size", "1.75 in",
          "use", "fire",
          "source-pressure", "120 psi");

  @Test
  void a_tip_alone_finds_its_flow_and_its_pressure() {
    Flowing flow = flow(LINE, "tip", "0.875 in");

    // Q = 29.7 d^2 sqrt(p): City of Rohnert Park training slides, Calculating Friction Loss.
    assertThat(flow.arrives().flowGpm())
        .isEqualTo(29.7 * 0.875 * 0.875 * Math.sqrt(flow.arrives().deliveredPsi()), within(0.01));
    assertThat(flow.arrives().deliveredPsi()).isBetween(20.0, 110.0);
    assertThat(flow.safe()).isTrue();
  }

  @Test
  void a_tip_brings_what_it_brings_where_a_flow_is_wanted() {
    Flowing alone = flow(LINE, "tip", "0.875 in");
    Flowing wanted = flow(LINE, "tip", "0.875 in", "flow", "161 gpm", "need", "50 psi");

    assertThat(alone.arrives().flowGpm()).isEqualTo(wanted.arrives().flowGpm(), within(0.01));
  }

  @Test
  void a_tank_takes_what_comes() {
    Flowing flow =
        flow(
            Map.of(
                "from", "2.5 NH male hydrant",
                "to", "2.5 NH female tank",
                "length", "300 ft",
                "size", "2.5 in",
                "source-pressure", "60 psi"));

    assertThat(flow.arrives().flowGpm()).isGreaterThan(200);
  }

  @Test
  void a_nozzle_that_says_nothing_of_itself_is_asked_for_its_flow() {
    assertThatThrownBy(() -> flow(LINE)).hasMessageContaining("flow").hasMessageContaining("tip");
  }

  @Test
  void a_line_that_is_not_named_is_planned_for_a_flow() {
    Map<String, String> open = new TreeMap<>(LINE);
    open.remove("size");

    assertThatThrownBy(() -> flow(open, "tip", "0.875 in")).hasMessageContaining("size");
  }

  @Test
  void tip_and_pressure_alone_plan_for_the_flow_of_the_tip() {
    Map<String, String> job = new TreeMap<>(LINE);
    job.put("tip", "7/8 in");
    job.put("need", "50 psi");

    assertThat(DemoCatalogue.plan(answers(job)).flowGpm())
        .isEqualTo(29.7 * 0.875 * 0.875 * Math.sqrt(50), within(1e-9));
    job.put("need", "0 psi");
    assertThatThrownBy(() -> DemoCatalogue.job(answers(job))).hasMessageContaining("need");
  }

  private static Flowing flow(Map<String, String> line, String... more) {
    Map<JobField, String> answers = new TreeMap<>();
    line.forEach((word, answer) -> answers.put(JobField.of(word).orElseThrow(), answer));
    for (int i = 0; i < more.length; i += 2) {
      answers.put(JobField.of(more[i]).orElseThrow(), more[i + 1]);
    }
    return PLANNER.flow(SoughtFlow.read(answers)).orElseThrow();
  }

  private static String[] answers(Map<String, String> job) {
    return job.entrySet().stream()
        .flatMap(answer -> java.util.stream.Stream.of(answer.getKey(), answer.getValue()))
        .toArray(String[]::new);
  }
}
