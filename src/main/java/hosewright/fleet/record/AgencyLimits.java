package hosewright.fleet.record;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the agency itself has decided; an empty limit never fires.
 *
 * @param ageYears age at which hose is retired, whole years from the day it was made
 * @param repairs most repairs a section may have
 * @param failureStreak how many failed tests in a row retire a section
 * @param edition edition of NFPA 1962 whose hold time is kept
 */
public record AgencyLimits(
    OptionalInt ageYears, OptionalInt repairs, OptionalInt failureStreak, String edition) {

  /** Nothing decided. */
  public static final AgencyLimits NONE =
      new AgencyLimits(
          OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), TestRule.USUAL_EDITION);

  /** How long a test must be held, minutes, and where that is published. */
  public Optional<TestRule> hold() {
    return TestRule.find(edition, "hold");
  }
}
