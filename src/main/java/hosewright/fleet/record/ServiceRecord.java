package hosewright.fleet.record;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One day in a section's life: a service test, an inspection's finding, a repair, its loss.
 *
 * @param section the section's id
 * @param date the day
 * @param outcome what was found or done
 * @param pressurePsi pressure of the test, psi
 * @param holdMinutes how long it was held, minutes
 * @param lengthFt length of the section afterwards, ft, where it was measured or cut
 * @param note anything else; may be empty
 */
public record ServiceRecord(
    String section,
    LocalDate date,
    Outcome outcome,
    OptionalDouble pressurePsi,
    OptionalDouble holdMinutes,
    OptionalDouble lengthFt,
    String note) {

  /** Whether both tell of the same day and outcome. */
  public boolean tellsTheSameAs(ServiceRecord other) {
    return section.equals(other.section)
        && date.equals(other.date)
        && outcome.equals(other.outcome);
  }
}
