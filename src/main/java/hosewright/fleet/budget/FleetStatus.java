package hosewright.fleet.budget;

import hosewright.fleet.record.CouplingMap.Gap;
import hosewright.fleet.record.OddThreads;
import java.time.LocalDate;
import java.util.List;

/**
 * A fleet on one day. The component names are the JSON names.
 *
 * @param mustGo sections that a rule retires today
 */
public record FleetStatus(
    LocalDate day,
    OnRecord onRecord,
    InUse inUse,
    Ages ages,
    Tests tests,
    List<RuleCount> mustGo,
    Fit fit) {

  /** So many sections, so many feet of them. */
  public record Count(String what, long sections, double lengthFt) {}

  public record AgeCount(int years, long sections) {}

  /** A section and the day its test was due. */
  public record Overdue(String section, String location, LocalDate due) {}

  /** A rule and how many sections it would retire today. */
  public record RuleCount(String rule, String sentence, long sections, String source) {}

  /**
   * All hose on record.
   *
   * @param sections all sections on record
   * @param byStatus how many stand where
   * @param lostFt length lost to recoupling of all sections on record, ft
   */
  public record OnRecord(long sections, List<Count> byStatus, double lostFt) {}

  /**
   * Hose that may be used.
   *
   * @param usable in service or in reserve; the figures below are of these
   * @param lengthFt their length, ft
   */
  public record InUse(
      long usable,
      double lengthFt,
      List<Count> bySize,
      List<Count> byLocation,
      List<Count> byThread) {}

  /**
   * How old it is.
   *
   * @param agesYears how many have each age in full years
   * @param pastAdvisedLife sections older than the age that is often advised; advice and no rule
   * @param advice that advice with its source
   * @param withoutMadeDate sections whose age counts from another day than the day they were made
   */
  public record Ages(
      List<AgeCount> agesYears, long pastAdvisedLife, String advice, long withoutMadeDate) {}

  /**
   * What must be tested.
   *
   * @param overdueTests how many have no passed or failed test within the year
   * @param overdue the longest overdue of them
   */
  public record Tests(long overdueTests, List<Overdue> overdue) {}

  /**
   * What does not go together.
   *
   * @param odd hose that does not mate with the rest
   * @param gaps which apparatus cannot be coupled to which hydrants
   */
  public record Fit(List<OddThreads.Odd> odd, List<Gap> gaps) {}
}
