package hosewright.fleet.budget;

import hosewright.fleet.record.CouplingMap.Gap;
import hosewright.fleet.record.OddThreads;
import java.time.LocalDate;
import java.util.List;

/**
 * A fleet on one day. The component names are the JSON names.
 *
 * @param sections all sections on record
 * @param byStatus how many stand where
 * @param usable in service or in reserve; the figures below are of these
 * @param lengthFt their length, ft
 * @param lostFt length lost to recoupling of all sections on record, ft
 * @param agesYears how many have each age in full years
 * @param overdueTests how many have no passed or failed test within the year
 * @param overdue the longest overdue of them
 * @param mustGo sections that a rule retires today
 * @param pastAdvisedLife sections older than the age that is often advised; advice and no rule
 * @param advice that advice with its source
 * @param withoutMadeDate sections whose age counts from another day than the day they were made
 * @param odd hose that does not mate with the rest
 * @param gaps which apparatus cannot be coupled to which hydrants
 */
public record FleetStatus(
    LocalDate day,
    long sections,
    List<Count> byStatus,
    long usable,
    double lengthFt,
    double lostFt,
    List<Count> bySize,
    List<Count> byLocation,
    List<Count> byThread,
    List<AgeCount> agesYears,
    long overdueTests,
    List<Overdue> overdue,
    List<RuleCount> mustGo,
    long pastAdvisedLife,
    String advice,
    long withoutMadeDate,
    List<OddThreads.Odd> odd,
    List<Gap> gaps) {

  /** So many sections, so many feet of them. */
  public record Count(String what, long sections, double lengthFt) {}

  public record AgeCount(int years, long sections) {}

  /** A section and the day its test was due. */
  public record Overdue(String section, String location, LocalDate due) {}

  /** A rule and how many sections it would retire today. */
  public record RuleCount(String rule, String sentence, long sections, String source) {}
}
