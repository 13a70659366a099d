package hosewright.fleet.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a section stands after all its records.
 *
 * @param status where it stands
 * @param retirement how it left service; empty while it is usable
 * @param lengthFt its present length, ft
 * @param repairs how often it was repaired
 * @param failureStreak failed tests since the last yearly test it passed; a retest passed after a
 *     repair does not end the streak
 * @param mendedSinceOut whether it was repaired since a rule last took it out
 * @param lastTest the last test under pressure
 */
public record Standing(
    SectionStatus status,
    Optional<Retirement> retirement,
    double lengthFt,
    int repairs,
    int failureStreak,
    boolean mendedSinceOut,
    Optional<ServiceRecord> lastTest) {

  /** The day its next service test is due: a year after the last, else a year after its birth. */
  public LocalDate testDue(HoseRecord section) {
    LocalDate last = lastTest.map(ServiceRecord::date).orElseGet(section::born);
    return last.plusYears(TestRule.intervalYears());
  }

  /** Length lost since it was bought, ft. */
  public double lengthLostFt(HoseRecord section) {
    return Math.max(0, section.make().nominalLengthFt() - lengthFt);
  }
}
