package hosewright.fleet.record;

import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A day's records put to the sections they are of: each is weighed against what the section's
 * earlier records say before any is kept.
 */
public final class DaysRecords {
  private final AgencyLimits limits;
  private final Map<String, SectionLife> lives = new HashMap<>();
  private final Function<String, Optional<SectionLife>> find;
  private final List<ServiceRecord> accepted = new ArrayList<>();
  private final List<Change> changes = new ArrayList<>();
  private final List<Problem> problems;
  private int known;

  /**
   * A section that left service, or came back, by one of the records.
   *
   * @param retirement by which rule it left; empty when it came back
   */
  public record Change(String section, SectionStatus status, Optional<Retirement> retirement) {}

  /**
   * @param find a section with its records so far
   * @param problems takes records that cannot be
   */
  public DaysRecords(
      AgencyLimits limits, Function<String, Optional<SectionLife>> find, List<Problem> problems) {
    this.limits = limits;
    this.find = find;
    this.problems = problems;
  }

  /** Takes a record of a section that is there; one already on file is passed over. */
  public void take(ServiceRecord record) {
    SectionLife life = lives.computeIfAbsent(record.section(), id -> find.apply(id).orElseThrow());
    if (life.records().stream().anyMatch(record::tellsTheSameAs)) {
      known++;
      return;
    }
    Standing before = life.standing(limits);
    Optional<String> objection = objection(record, before).or(() -> notYetDue(record, life));
    if (objection.isPresent()) {
      problems.add(
          Problem.of(
              "record of " + record.section() + " on " + record.date(),
              record.outcome().code(),
              objection.get()));
      return;
    }
    SectionLife grown = life.with(record);
    Standing after = grown.standing(limits);
    lives.put(record.section(), grown);
    accepted.add(record);
    if (after.status() != before.status()) {
      changes.add(new Change(record.section(), after.status(), after.retirement()));
    }
  }

  private static Optional<String> objection(ServiceRecord record, Standing before) {
    Optional<Retirement> left =
        before.retirement().filter(out -> !out.date().isAfter(record.date()));
    if (left.isEmpty()) {
      return Optional.empty();
    }
    String since = left.get().date() + " (" + left.get().rule() + ")";
    if (before.status() == SectionStatus.RETIRED) {
      return Optional.of("nothing more: the section is retired since " + since);
    }
    boolean passedUnmended =
        record.outcome().effect() == Outcome.Effect.PASS && !before.mendedSinceOut();
    return passedUnmended
        ? Optional.of("a repair first: the section is out of service since " + since)
        : Optional.empty();
  }

  /** A rule that fires on age is taken at its word only where it fires. */
  private Optional<String> notYetDue(ServiceRecord record, SectionLife life) {
    String rule = record.outcome().rule();
    boolean onAge =
        rule.equals(RetirementRule.AGE_LIMIT) || rule.equals(RetirementRule.MADE_BEFORE);
    boolean fires =
        life.due(limits, record.date()).filter(due -> due.rule().equals(rule)).isPresent();
    return onAge && !fires
        ? Optional.of("another outcome: that rule does not fire on this section that day")
        : Optional.empty();
  }

  /** The records to keep. */
  public List<ServiceRecord> accepted() {
    return List.copyOf(accepted);
  }

  /** Sections that left service or came back. */
  public List<Change> changes() {
    return List.copyOf(changes);
  }

  /** How many records were on file already. */
  public int known() {
    return known;
  }
}
