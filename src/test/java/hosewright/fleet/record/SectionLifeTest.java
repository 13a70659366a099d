package hosewright.fleet.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.fleet.budget.Lifetime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class SectionLifeTest {
  private static final LocalDate MADE = LocalDate.of(2014, 3, 1);

  private static SectionLife life(ServiceRecord... records) {
    return new SectionLife(Sections.made("H-1", MADE), List.of(records));
  }

  private static AgencyLimits limits(OptionalInt age, OptionalInt repairs, OptionalInt streak) {
    return new AgencyLimits(age, repairs, streak, TestRule.USUAL_EDITION);
  }

  @Test
  void a_leak_takes_a_section_out_and_says_by_which_record() {
    Standing standing =
        life(
                Sections.record("H-1", "2016-05-02", "pass"),
                Sections.record("H-1", "2017-05-02", "leak"))
            .standing(AgencyLimits.NONE);
    assertThat(standing.status()).isEqualTo(SectionStatus.REMOVED);
    assertThat(standing.retirement()).contains(new Retirement("leak", 2, LocalDate.of(2017, 5, 2)));
  }

  @Test
  void a_repair_and_a_passed_test_bring_it_back_shorter() {
    SectionLife life =
        life(
            Sections.record("H-1", "2017-05-02", "coupling-slip"),
            Sections.cut("H-1", "2017-05-20", 48.5),
            Sections.record("H-1", "2017-05-21", "pass"));
    Standing standing = life.standing(AgencyLimits.NONE);
    assertThat(standing.status()).isEqualTo(SectionStatus.IN_SERVICE);
    assertThat(standing.retirement()).isEmpty();
    assertThat(standing.lengthLostFt(life.section())).isEqualTo(1.5);
    assertThat(standing.repairs()).isEqualTo(1);
  }

  /**
   * Source: NFPA 1962-2018, 7.1.11 (secondary summary): hose is tested when couplings are attached
   * or reattached. For hose mended otherwise: common practice, no source.
   */
  @Test
  void hose_recoupled_or_mended_without_a_failure_stays_out_until_it_passes() {
    for (String outcome : List.of("recoupled", "repaired")) {
      SectionLife mended =
          life(
              Sections.record("H-1", "2016-05-02", "pass"),
              Sections.record("H-1", "2016-09-01", outcome));
      Standing standing = mended.standing(AgencyLimits.NONE);
      assertThat(standing.status()).as(outcome).isEqualTo(SectionStatus.REMOVED);
      assertThat(standing.retirement())
          .as(outcome)
          .contains(new Retirement("mended", 2, LocalDate.of(2016, 9, 1)));
      Standing passed =
          mended.with(Sections.record("H-1", "2016-09-02", "pass")).standing(AgencyLimits.NONE);
      assertThat(passed.status()).as(outcome).isEqualTo(SectionStatus.IN_SERVICE);
      assertThat(passed.retirement()).as(outcome).isEmpty();
      assertThat(Lifetime.of(mended, AgencyLimits.NONE).orElseThrow().hasFailed())
          .as(outcome)
          .isFalse();
    }
  }

  @Test
  void hose_in_reserve_goes_back_to_reserve_when_it_was_mended_and_passes() {
    SectionLife life =
        new SectionLife(
            Sections.of("H-1", MADE, SectionStatus.RESERVE),
            List.of(
                Sections.cut("H-1", "2017-05-20", 48.5),
                Sections.record("H-1", "2017-05-21", "pass")));
    assertThat(life.standing(AgencyLimits.NONE).status()).isEqualTo(SectionStatus.RESERVE);
  }

  @Test
  void hose_mended_before_the_inventory_found_it_gone_is_traced_to_the_inventory() {
    SectionLife life =
        new SectionLife(
            Sections.of("H-1", MADE, SectionStatus.RETIRED),
            List.of(Sections.cut("H-1", "2017-05-20", 48.5)));
    assertThat(life.standing(AgencyLimits.NONE).retirement())
        .contains(new Retirement("before-register", 0, LocalDate.of(2020, 1, 1)));
  }

  @Test
  void a_passed_test_without_a_repair_does_not_bring_it_back() {
    assertThat(
            life(
                    Sections.record("H-1", "2017-05-02", "leak"),
                    Sections.record("H-1", "2017-06-02", "pass"))
                .standing(AgencyLimits.NONE)
                .status())
        .isEqualTo(SectionStatus.REMOVED);
  }

  @Test
  void a_delaminated_liner_condemns() {
    assertThat(
            life(Sections.record("H-1", "2019-05-02", "liner"))
                .standing(AgencyLimits.NONE)
                .status())
        .isEqualTo(SectionStatus.RETIRED);
  }

  /** Source: NFPA 1962-2018, 4.8.1 (secondary summary): made before July 1987. */
  @Test
  void hose_made_before_july_1987_must_go_and_younger_hose_not_for_that() {
    LocalDate day = LocalDate.of(2026, 11, 25);
    SectionLife old = new SectionLife(Sections.made("H-1", LocalDate.of(1987, 6, 30)), List.of());
    SectionLife just = new SectionLife(Sections.made("H-1", LocalDate.of(1987, 7, 1)), List.of());
    assertThat(old.due(AgencyLimits.NONE, day)).map(Retirement::rule).contains("made-before-1987");
    assertThat(just.due(AgencyLimits.NONE, day)).isEmpty();
  }

  @Test
  void the_age_limit_fires_on_the_day_it_is_reached_and_only_where_it_is_set() {
    AgencyLimits ten = limits(OptionalInt.of(10), OptionalInt.empty(), OptionalInt.empty());
    assertThat(life().due(ten, LocalDate.of(2024, 2, 29))).isEmpty();
    assertThat(life().due(ten, LocalDate.of(2024, 3, 1)))
        .contains(new Retirement("age-limit", 0, LocalDate.of(2024, 3, 1)));
    assertThat(life().due(AgencyLimits.NONE, LocalDate.of(2050, 1, 1))).isEmpty();
  }

  @Test
  void one_repair_more_than_the_agency_allows_retires() {
    AgencyLimits two = limits(OptionalInt.empty(), OptionalInt.of(2), OptionalInt.empty());
    Standing standing =
        life(
                Sections.cut("H-1", "2016-01-01", 49),
                Sections.cut("H-1", "2017-01-01", 48),
                Sections.cut("H-1", "2018-01-01", 47))
            .standing(two);
    assertThat(standing.retirement())
        .contains(new Retirement("repairs", 3, LocalDate.of(2018, 1, 1)));
  }

  @Test
  void a_retest_after_a_repair_does_not_end_a_streak_of_failures_but_a_year_s_pass_does() {
    AgencyLimits two = limits(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(2));
    List<ServiceRecord> failedTwice =
        List.of(
            Sections.record("H-1", "2016-05-01", "leak"),
            Sections.cut("H-1", "2016-05-10", 49),
            Sections.record("H-1", "2016-05-11", "pass"),
            Sections.record("H-1", "2017-05-01", "leak"));
    HoseRecord section = Sections.made("H-1", MADE);
    assertThat(new SectionLife(section, failedTwice).standing(two).retirement())
        .map(Retirement::rule)
        .contains("failure-streak");
    List<ServiceRecord> passedBetween = new ArrayList<>(failedTwice.subList(0, 3));
    passedBetween.add(Sections.record("H-1", "2017-05-01", "pass"));
    passedBetween.add(Sections.record("H-1", "2018-05-01", "leak"));
    assertThat(new SectionLife(section, passedBetween).standing(two).retirement())
        .map(Retirement::rule)
        .contains("leak");
  }

  @Test
  void what_the_inventory_says_is_retired_without_a_record_is_traced_to_its_row() {
    SectionLife life = new SectionLife(Sections.of("H-1", MADE, SectionStatus.RETIRED), List.of());
    assertThat(life.standing(AgencyLimits.NONE).retirement())
        .contains(new Retirement("before-register", 0, LocalDate.of(2020, 1, 1)));
  }

  @Test
  void a_failure_lies_between_the_last_pass_and_the_test_that_found_it() {
    Lifetime life =
        Lifetime.of(
                life(
                    Sections.record("H-1", "2017-03-01", "pass"),
                    Sections.record("H-1", "2018-03-01", "leak")),
                AgencyLimits.NONE)
            .orElseThrow();
    // From 2014-03-01: register begins 2015-01-01, passed after 3 years, failed after 4.
    assertThat(life.entry()).isCloseTo(306 / 365.25, within(1e-9));
    assertThat(life.sound()).isCloseTo(3, within(0.01));
    assertThat(life.failed()).isCloseTo(4, within(0.01));
  }

  @Test
  void loss_and_the_age_limit_are_no_failures() {
    Optional<Lifetime> lost =
        Lifetime.of(
            life(
                Sections.record("H-1", "2017-03-01", "pass"),
                Sections.record("H-1", "2018-03-01", "lost")),
            AgencyLimits.NONE);
    assertThat(lost.orElseThrow().hasFailed()).isFalse();
    assertThat(RetirementRule.of("age-limit").failure()).isFalse();
  }

  @Test
  void repaired_and_passed_again_is_no_failure() {
    Lifetime life =
        Lifetime.of(
                life(
                    Sections.record("H-1", "2017-03-01", "leak"),
                    Sections.cut("H-1", "2017-04-01", 49),
                    Sections.record("H-1", "2017-04-02", "pass")),
                AgencyLimits.NONE)
            .orElseThrow();
    assertThat(life.hasFailed()).isFalse();
  }

  @Test
  void every_section_out_of_service_is_traced_to_a_rule_that_fires_on_a_record_of_that_day() {
    List<String> outcomes = List.copyOf(Outcome.byWord().keySet());
    for (long seed = 1; seed <= 5_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      SectionStatus inventory =
          SectionStatus.values()[random.nextInt(10) > 7 ? random.nextInt(4) : 0];
      AgencyLimits limits = limits(maybe(random, 8, 12), maybe(random, 1, 3), maybe(random, 1, 3));
      List<ServiceRecord> records = new ArrayList<>();
      LocalDate day = LocalDate.of(2016, 1, 1);
      for (int i = random.nextInt(9); i > 0; i--) {
        day = day.plusDays(1 + random.nextInt(500));
        String outcome =
            random.nextBoolean() ? "pass" : outcomes.get(random.nextInt(outcomes.size()));
        records.add(
            new ServiceRecord(
                "H-1",
                day,
                Outcome.of(outcome),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ""));
      }
      SectionLife life = new SectionLife(Sections.of("H-1", MADE, inventory), records);
      Standing standing = life.standing(limits);
      assertThat(standing.retirement().isPresent())
          .as("seed %d", seed)
          .isEqualTo(!standing.status().usable());
      if (standing.retirement().isPresent()) {
        fires(standing.retirement().get(), life, limits, seed);
      }
    }
  }

  /** Says anew, from the record alone, whether the rule had reason to fire. */
  private static void fires(Retirement left, SectionLife life, AgencyLimits limits, long seed) {
    RetirementRule rule = left.ruleInWords();
    assertThat(rule.source()).as("seed %d", seed).isNotEmpty();
    if (left.record() == 0) {
      assertThat(rule.firing().trigger())
          .as("seed %d", seed)
          .isEqualTo(RetirementRule.Trigger.INVENTORY);
      assertThat(life.section().status().usable()).as("seed %d", seed).isFalse();
      assertThat(life.section().days().leftOn()).as("seed %d", seed).contains(left.date());
      return;
    }
    ServiceRecord record = life.records().get(left.record() - 1);
    assertThat(record.date()).as("seed %d", seed).isEqualTo(left.date());
    long repairs =
        life.records().subList(0, left.record()).stream()
            .filter(r -> r.outcome().effect() == Outcome.Effect.REPAIR)
            .count();
    switch (rule.firing().trigger()) {
      case RECORD, AGE, MADE_BEFORE ->
          assertThat(record.outcome().rule()).as("seed %d", seed).isEqualTo(rule.code());
      case REPAIRS ->
          assertThat(repairs).as("seed %d", seed).isEqualTo(limits.repairs().getAsInt() + 1L);
      case STREAK -> {
        long failures =
            life.records().subList(0, left.record()).stream()
                .filter(r -> r.outcome().failed())
                .count();
        assertThat(record.outcome().failed()).as("seed %d", seed).isTrue();
        assertThat(failures)
            .as("seed %d", seed)
            .isGreaterThanOrEqualTo(limits.failureStreak().getAsInt());
      }
      default -> throw new AssertionError("seed " + seed + ": " + rule);
    }
  }

  private static OptionalInt maybe(SplittableRandom random, int least, int most) {
    return random.nextBoolean()
        ? OptionalInt.empty()
        : OptionalInt.of(random.nextInt(least, most + 1));
  }
}
