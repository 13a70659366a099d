package hosewright.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.OpenDesk;
import hosewright.desk.WrittenJob;
import hosewright.intake.JobFile;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.SoughtFlow;
import hosewright.job.question.JobField;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo job from a hydrant to a nozzle, asked of the demo's books in every way. */
final class AskLineTest {
  @TempDir private Path folder;
  private OpenDesk books;

  @BeforeEach
  void open() {
    books = OpenDesk.withDemo(folder);
  }

  @Test
  void the_reasons_are_given_for_the_very_plan_that_is_made() {
    var plan = new PlanJob(books).plan(written(Map.of()));

    assertThat(plan.feasible()).isTrue();
    assertThat(new ExplainPlan(books).explain(job(Map.of())).plan().total())
        .isEqualTo(plan.total());
  }

  @Test
  void a_customer_with_terms_pays_less_than_the_list() {
    var atList = new PlanJob(books).plan(written(Map.of()));
    var agreed = new PlanJob(books).plan(written(Map.of(JobField.CUSTOMER, "HARLOW-FD")));

    assertThat(agreed.total()).isLessThan(atList.total());
  }

  @Test
  void the_cheapest_size_that_does_it_is_the_one_planned() {
    var plan = new PlanJob(books).plan(written(Map.of()));
    var sizes = new CompareSizes(books).compare(job(Map.of()));

    assertThat(sizes.anyFeasible()).isTrue();
    assertThat(sizes.sizes().stream().filter(CompareSizes.Size::feasible))
        .extracting(CompareSizes.Size::total)
        .contains(plan.total())
        .allMatch(total -> !total.isLessThan(plan.total()));
  }

  @Test
  void the_front_begins_with_the_cheapest_line() {
    var front = new WeighTradeOffs(books).weigh(job(Map.of()));

    assertThat(front.rows()).hasSizeBetween(1, TradeOffs.MOST_ROWS);
    assertThat(front.rows().get(0).bestIn()).contains("price");
    assertThat(front.rows().get(0).total())
        .isEqualTo(new PlanJob(books).plan(written(Map.of())).total());
  }

  @Test
  void where_no_hose_may_be_laid_the_plan_that_says_why_is_the_answer() {
    var found = new FindFlow(books).find(SoughtFlow.of(job(Map.of(JobField.SIZE, "4.5 in"))));

    assertThat(found.flow()).isEmpty();
    assertThat(found.noPlan().orElseThrow().feasible()).isFalse();
  }

  @Test
  void where_a_line_can_be_laid_the_flow_is_all_the_answer() {
    var found = new FindFlow(books).find(SoughtFlow.of(job(Map.of())));

    assertThat(found.flow()).isPresent();
    assertThat(found.noPlan()).isEmpty();
  }

  private static Map<JobField, String> answers(Map<JobField, String> changed) {
    Map<JobField, String> answers = new TreeMap<>();
    answers.putAll(JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers());
    answers.remove(JobField.SIZE);
    answers.putAll(changed);
    return answers;
  }

  private static WrittenJob written(Map<JobField, String> changed) {
    return WrittenJob.of(answers(changed));
  }

  private static Job job(Map<JobField, String> changed) {
    return JobForm.read(answers(changed));
  }
}
