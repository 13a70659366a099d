package hosewright.fleet.budget;

import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.Outcome;
import hosewright.fleet.record.Retirement;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.ServiceRecord;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What one section tells about how long hose lasts. Time is age in years.
 *
 * @param entry age from which on its failing would have been seen
 * @param sound age at which it was last known to be sound
 * @param failed age at which it was found to have failed; infinite for one that has not
 */
public record Lifetime(double entry, double sound, double failed) {
  private static final double DAYS_A_YEAR = 365.25;

  public Lifetime {
    if (!(entry >= 0 && entry <= sound && sound <= failed)) {
      throw new IllegalArgumentException(
          "ages must rise from entry over sound to failed, not "
              + entry
              + ", "
              + sound
              + ", "
              + failed);
    }
  }

  /** Whether the section wore out, as against being still sound or withdrawn for another reason. */
  public boolean hasFailed() {
    return !Double.isInfinite(failed);
  }

  /** The age at which it leaves the risk set: found failed, or last known sound. */
  public double exit() {
    return hasFailed() ? failed : sound;
  }

  /** Age in years between two days. */
  public static double ageYears(LocalDate born, LocalDate day) {
    return ChronoUnit.DAYS.between(born, day) / DAYS_A_YEAR;
  }

  /**
   * What a section tells.
   *
   * <p>It enters at the age of its first record. Out of service for wear is a failure, found on the
   * day of the record that shows it and begun after the last test it passed; a section repaired and
   * passed again has not failed. One that is still sound, reached the age limit, was lost or
   * withdrawn is cut off at the last day it was known to be sound.
   *
   * @return empty when it was never seen sound for any length of time
   */
  public static Optional<Lifetime> of(SectionLife life, AgencyLimits limits) {
    LocalDate born = life.section().born();
    double entry = Math.max(0, ageYears(born, life.firstRecord()));
    Optional<Retirement> failure =
        life.standing(limits).retirement().filter(left -> left.ruleInWords().failure());
    int upTo = failure.map(left -> left.record() - 1).orElse(life.records().size());
    double sound = Math.max(entry, lastSound(life.records().subList(0, upTo), born));
    double failed =
        failure.map(left -> ageYears(born, left.date())).orElse(Double.POSITIVE_INFINITY);
    return failed > entry && (failure.isPresent() || sound > entry)
        ? Optional.of(new Lifetime(entry, Math.min(sound, failed), failed))
        : Optional.empty();
  }

  private static double lastSound(List<ServiceRecord> records, LocalDate born) {
    return records.stream()
        .filter(record -> record.outcome().effect() == Outcome.Effect.PASS)
        .mapToDouble(record -> ageYears(born, record.date()))
        .max()
        .orElse(0);
  }
}
