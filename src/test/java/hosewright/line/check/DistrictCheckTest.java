package hosewright.line.check;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.DemoCatalogue;
import hosewright.line.plan.Planner;
import hosewright.thread.LocalThreads;
import java.io.StringReader;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** A plan against the dealer's register of local threads; districts are invented. */
final class DistrictCheckTest {
  private static final LocalThreads REGISTER =
      LocalThreads.read(
          new StringReader(
              """
              district,size,family,checked_on,checked_by
              Port Harlow,2.5,NH,2026-01-31,gauge
              Port Harlow,1.5,NH,2026-01-31,gauge
              Moss Landing,2.5,PCT,2025-06-01,sample
              Moss Landing,1.5,NH,2025-06-01,sample
              Fern Cross,2.5,NH,2025-06-01,letter
              """));

  private static LinePlan plan(String... more) {
    String[] answers = {
      "from", "2.5 NH male hydrant",
      "to", "1.5 NH nozzle",
      "length", "200 ft",
      "flow", "95 gpm",
      "need", "75 psi",
      "size", "1.75 in",
      "hose-thread", "NH"
    };
    String[] all = new String[answers.length + more.length];
    System.arraycopy(answers, 0, all, 0, answers.length);
    System.arraycopy(more, 0, all, answers.length, more.length);
    return new Planner(
            DemoCatalogue.get(),
            DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
            DemoCatalogue.DATE,
            CurrencyUnit.USD,
            REGISTER)
        .plan(DemoCatalogue.job(all));
  }

  private static Optional<Check> check(LinePlan plan) {
    return plan.checks().stream().filter(check -> check.name().equals("local thread")).findFirst();
  }

  @Test
  void a_job_that_names_no_district_is_not_compared() {
    assertThat(check(plan())).isEmpty();
  }

  @Test
  void where_the_district_uses_the_same_threads_the_check_passes() {
    Check check = check(plan("district", "port harlow")).orElseThrow();
    assertThat(check.outcome()).isEqualTo(Outcome.PASS);
    assertThat(check.value()).isEqualTo(2);
    assertThat(check.limit()).isEqualTo(2);
  }

  @Test
  void a_hydrant_thread_that_the_district_does_not_use_is_warned_of() {
    LinePlan plan = plan("district", "Moss Landing");
    Check check = check(plan).orElseThrow();
    assertThat(check.outcome()).isEqualTo(Outcome.WARN);
    assertThat(check.note())
        .contains("uses 2.5 PCT (checked 2025-06-01, sample)")
        .contains("the plan has 2.5 NH")
        .contains("check with the local fire service");
    assertThat(plan.feasible()).isTrue();
    assertThat(plan.cautions()).anyMatch(text -> text.contains("differ from district to district"));
  }

  @Test
  void a_size_that_the_register_does_not_have_is_warned_of() {
    Check check = check(plan("district", "Fern Cross")).orElseThrow();
    assertThat(check.outcome()).isEqualTo(Outcome.WARN);
    assertThat(check.note()).contains("nothing of that size").contains("1.5 NH");
  }

  @Test
  void a_district_that_is_not_in_the_register_is_warned_of() {
    Check check = check(plan("district", "Nether Wick")).orElseThrow();
    assertThat(check.outcome()).isEqualTo(Outcome.WARN);
    assertThat(check.note())
        .contains("Nether Wick is not in your register")
        .contains("check with the local fire service");
  }
}
