package hosewright.thread;

import java.util.OptionalDouble;

/**
 * The figures held for one thread at one nominal size; a figure that was not found is empty.
 *
 * @param family family code
 * @param sizeIn nominal size, inches
 * @param threadsPerInch threads in one inch of length
 * @param sharedWith the code of another family whose name is also used for this thread; or empty
 * @param male what is measured over the male
 * @param female what is measured inside the female
 * @param origin who says so
 */
public record ThreadDimensions(
    String family,
    double sizeIn,
    OptionalDouble threadsPerInch,
    String sharedWith,
    Male male,
    Female female,
    Origin origin) {

  /**
   * Diameters of a male thread, inches.
   *
   * @param majorMaxIn largest diameter over the thread; for a taper thread at the pipe or gauge
   *     plane
   * @param majorMinIn smallest diameter over a new thread
   * @param pitchMaxIn largest pitch diameter; of a taper thread the one at the hand-tight plane
   * @param pitchMinIn smallest pitch diameter
   */
  public record Male(
      OptionalDouble majorMaxIn,
      OptionalDouble majorMinIn,
      OptionalDouble pitchMaxIn,
      OptionalDouble pitchMinIn,
      Taper taper) {}

  /**
   * What only a taper thread has, inches.
   *
   * @param smallEndMajorIn diameter over the first thread
   * @param e0In pitch diameter at the small end (E0)
   * @param l1In hand-tight engagement length (L1)
   */
  public record Taper(OptionalDouble smallEndMajorIn, OptionalDouble e0In, OptionalDouble l1In) {}

  /**
   * Diameters of a female thread, inches.
   *
   * @param minorMinIn smallest minor diameter
   * @param minorMaxIn largest minor diameter
   * @param pitchMinIn smallest pitch diameter
   * @param majorMinIn smallest major diameter
   */
  public record Female(
      OptionalDouble minorMinIn,
      OptionalDouble minorMaxIn,
      OptionalDouble pitchMinIn,
      OptionalDouble majorMinIn) {}

  /** The figure most is told by: the largest diameter over the male. */
  public OptionalDouble majorMaxIn() {
    return male.majorMaxIn();
  }

  /** Whether any diameter and the pitch are known. */
  public boolean figuresHeld() {
    return threadsPerInch.isPresent()
        && (male.majorMaxIn().isPresent() || male.pitchMaxIn().isPresent());
  }

  /** Distance from thread to thread, inches. */
  public OptionalDouble pitchIn() {
    return threadsPerInch.isPresent()
        ? OptionalDouble.of(1 / threadsPerInch.getAsDouble())
        : OptionalDouble.empty();
  }
}
