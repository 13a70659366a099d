package hosewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.hydraulics.Hydrant;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.JobField;
import hosewright.job.question.SourceKind;
import hosewright.line.plan.DemoCatalogue;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class JobFormTest {
  private static final List<String> SOUND =
      List.of(
          "from", "2.5 NH male hydrant",
          "to", "1.5 NH nozzle",
          "length", "400 ft",
          "flow", "150 gpm",
          "need", "50 psi");

  private static Job job(String... more) {
    List<String> answers = new ArrayList<>(SOUND);
    answers.addAll(List.of(more));
    return DemoCatalogue.job(answers.toArray(String[]::new));
  }

  private static List<Problem> problems(String... more) {
    return catchThrowableOfType(BadInputException.class, () -> job(more)).problems();
  }

  @Test
  void what_carries_an_end_may_be_said_with_it_and_then_its_usual_gender_goes_unsaid() {
    Job job = job("from", "2.5 NH hydrant");
    assertThat(job.source()).isEqualTo(SourceKind.HYDRANT);
    assertThat(job.from()).hasToString("2.5 NH male");
    assertThat(job.appliance()).isEqualTo(ApplianceKind.NOZZLE);
    assertThat(job.to()).hasToString("1.5 NH female");
  }

  @Test
  void slack_is_five_percent_unless_said_otherwise() {
    assertThat(job().run().slack()).isEqualTo(0.05);
    assertThat(job("slack", "10 %").run().slack()).isEqualTo(0.10);
  }

  @Test
  void a_hydrant_is_stated_by_its_three_figures_together() {
    Job whole = job("static", "80 psi", "residual", "60 psi", "at", "900 gpm");
    assertThat(whole.supply()).hasValueSatisfying(s -> assertThat(s).isInstanceOf(Hydrant.class));
    assertThat(problems("static", "80 psi"))
        .extracting(Problem::field)
        .containsExactly("residual", "at");
  }

  @Test
  void all_that_is_missing_is_named_at_once() {
    assertThatThrownBy(() -> DemoCatalogue.job("from", "2.5 NH male"))
        .isInstanceOfSatisfying(
            BadInputException.class,
            bad ->
                assertThat(bad.problems())
                    .extracting(Problem::field)
                    .containsExactly("to", "length", "flow", "need"));
  }

  @ParameterizedTest
  @CsvSource({
    "from,      2.5 NHH male",
    "to,        1.5 NH",
    "length,    0 ft",
    "length,    -400 ft",
    "length,    400",
    "length,    400 psi",
    "length,    90000 ft",
    "flow,      0 gpm",
    "flow,      -5 gpm",
    "flow,      1e9 gpm",
    "flow,      150 ft",
    "need,      fifty",
    "rise,      20",
    "rise,      900 ft",
    "slack,     500 %",
    "size,      0 in",
    "section,   0 ft",
    "lines,     4",
    "lines,     1.5",
    "use,       firee",
    "hose-thread, NQ",
    "temperature, 60",
    "date,      2026-02-30",
    "friction-coefficient, -1",
    "pump-curve, 180 psi"
  })
  void an_answer_that_cannot_be_used_is_refused_by_its_field_and_value(String field, String value) {
    List<Problem> problems = problems(field, value);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).field()).isEqualTo(field);
    assertThat(problems.get(0).allowed()).isNotBlank();
    assertThat(problems.get(0).sentence()).contains(field).contains(problems.get(0).value());
  }

  @Test
  void a_source_is_stated_once() {
    assertThat(problems("source-pressure", "100 psi", "pump-curve", "180 psi at 0 gpm"))
        .hasSize(1)
        .allMatch(problem -> problem.allowed().contains("stated once"));
  }

  @Test
  void one_answer_can_be_checked_alone() {
    assertThat(JobForm.problemsOf(JobField.LENGTH, "400 ft")).isEmpty();
    assertThat(JobForm.problemsOf(JobField.LENGTH, "400")).hasSize(1);
    assertThat(JobForm.problemsOf(JobField.USE, "fire")).isEmpty();
  }
}
