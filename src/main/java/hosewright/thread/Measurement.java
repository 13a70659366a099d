package hosewright.thread;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was measured on an unknown end, and how.
 *
 * @param readingIn outside diameter by caliper, or circumference by a strip of paper, inches
 * @param wrapped whether the reading is a circumference
 * @param threadsPerInch threads counted in one inch; empty when not counted
 * @param taper whether the thread narrows towards its end; empty when not looked at
 * @param stencil what is stamped or printed on the part; empty when nothing is
 * @param gender which half was measured; only a male can be
 * @param readingErrorIn how far off the reading may be (one standard deviation), inches
 */
public record Measurement(
    double readingIn,
    boolean wrapped,
    OptionalDouble threadsPerInch,
    Optional<Boolean> taper,
    String stencil,
    Gender gender,
    double readingErrorIn) {

  /**
   * One standard deviation of a caliper in the hand on a used thread; common practice, no source.
   */
  public static final double CALIPER_ERROR_IN = 0.02;

  /** One standard deviation of a paper strip around a thread; common practice, no source. */
  public static final double STRIP_ERROR_IN = 0.06;

  private static final double SMALLEST_IN = 0.25;
  private static final double LARGEST_IN = 12;

  /** An outside diameter over a male thread, inches. */
  public static Measurement caliper(double outsideDiameterIn) {
    return of(outsideDiameterIn, false, CALIPER_ERROR_IN);
  }

  /** The length of a strip of paper that just goes round a male thread, inches. */
  public static Measurement strip(double circumferenceIn) {
    return of(circumferenceIn, true, STRIP_ERROR_IN);
  }

  private static Measurement of(double readingIn, boolean wrapped, double errorIn) {
    return new Measurement(
        readingIn, wrapped, OptionalDouble.empty(), Optional.empty(), "", Gender.MALE, errorIn);
  }

  public Measurement withThreadsPerInch(double threads) {
    return new Measurement(
        readingIn, wrapped, OptionalDouble.of(threads), taper, stencil, gender, readingErrorIn);
  }

  /** Pitch read from a metric thread gauge, millimetres. */
  public Measurement withPitchMm(double pitchMm) {
    return withThreadsPerInch(25.4 / pitchMm);
  }

  public Measurement withTaper(boolean tapered) {
    return new Measurement(
        readingIn, wrapped, threadsPerInch, Optional.of(tapered), stencil, gender, readingErrorIn);
  }

  public Measurement withStencil(String text) {
    return new Measurement(readingIn, wrapped, threadsPerInch, taper, text, gender, readingErrorIn);
  }

  public Measurement withGender(Gender half) {
    return new Measurement(
        readingIn, wrapped, threadsPerInch, taper, stencil, half, readingErrorIn);
  }

  /** One standard deviation of the reading, inches: of the diameter or of the circumference. */
  public Measurement withReadingError(double errorIn) {
    return new Measurement(readingIn, wrapped, threadsPerInch, taper, stencil, gender, errorIn);
  }

  /** The outside diameter that was measured, directly or through the circumference. */
  public double outsideDiameterIn() {
    return wrapped ? readingIn / Math.PI : readingIn;
  }

  /** One standard deviation of the diameter; paper is never taken to be better than a caliper. */
  double diameterErrorIn() {
    return wrapped ? Math.max(readingErrorIn / Math.PI, CALIPER_ERROR_IN) : readingErrorIn;
  }

  /**
   * Refuses what cannot be used, all of it at once.
   *
   * @throws BadInputException naming od or wrap, tpi, gender or error
   */
  void check() {
    List<Problem> problems = new ArrayList<>();
    double scale = wrapped ? Math.PI : 1;
    if (!(outsideDiameterIn() >= SMALLEST_IN && outsideDiameterIn() <= LARGEST_IN)) {
      problems.add(
          Problem.of(
              wrapped ? "wrap" : "od",
              String.valueOf(readingIn),
              String.format(
                  Locale.ROOT,
                  "from %.2f to %.1f in over a male thread",
                  SMALLEST_IN * scale,
                  LARGEST_IN * scale)));
    }
    if (threadsPerInch.isPresent()
        && !(threadsPerInch.getAsDouble() >= 2 && threadsPerInch.getAsDouble() <= 30)) {
      problems.add(
          Problem.of(
              "tpi",
              String.valueOf(threadsPerInch.getAsDouble()),
              "from 2 to 30 threads per inch"));
    }
    if (!(readingErrorIn > 0 && readingErrorIn <= 0.5)) {
      problems.add(Problem.of("error", String.valueOf(readingErrorIn), "above 0 and up to 0.5 in"));
    }
    if (gender != Gender.MALE) {
      problems.add(
          new Problem(
              "gender",
              gender == Gender.SEXLESS ? "sexless" : gender.word(),
              "a thread is told by the outside of its male, never by measuring across a female: "
                  + "measure the male that fits it, or read the stencil on the part",
              "male"));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
