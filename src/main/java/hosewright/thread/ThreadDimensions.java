package hosewright.thread;

import java.util.OptionalDouble;

/**
 * The figures held for one thread at one nominal size; a figure that was not found is empty.
 *
 * @param family family code
 * @param sizeIn nominal size, inches
 * @param threadsPerInch threads in one inch of length
 * @param sharedWith the code of another family whose name is also used for this thread; or empty
 * @param majorMaxIn largest diameter over the male thread; for a taper thread at the pipe or gauge
 *     plane
 * @param majorMinIn smallest diameter over a new male thread
 * @param pitchMaxIn largest pitch diameter of the male; of a taper thread the one at the hand-tight
 *     plane
 * @param pitchMinIn smallest pitch diameter of the male
 * @param femaleMinorMinIn smallest minor diameter of the female
 * @param femaleMinorMaxIn largest minor diameter of the female
 * @param femalePitchMinIn smallest pitch diameter of the female
 * @param femaleMajorMinIn smallest major diameter of the female
 * @param smallEndMajorIn diameter over the first thread of a taper male
 * @param e0In pitch diameter at the small end of a taper male (E0)
 * @param l1In hand-tight engagement length of a taper thread (L1)
 * @param standard the standard that sets the thread
 * @param table the table in that standard
 * @param confidence how sure the figures are
 * @param source where the figures were read
 * @param note what else to know
 */
public record ThreadDimensions(
    String family,
    double sizeIn,
    OptionalDouble threadsPerInch,
    String sharedWith,
    OptionalDouble majorMaxIn,
    OptionalDouble majorMinIn,
    OptionalDouble pitchMaxIn,
    OptionalDouble pitchMinIn,
    OptionalDouble femaleMinorMinIn,
    OptionalDouble femaleMinorMaxIn,
    OptionalDouble femalePitchMinIn,
    OptionalDouble femaleMajorMinIn,
    OptionalDouble smallEndMajorIn,
    OptionalDouble e0In,
    OptionalDouble l1In,
    String standard,
    String table,
    String confidence,
    String source,
    String note) {

  /** Whether any diameter and the pitch are known. */
  public boolean figuresHeld() {
    return threadsPerInch.isPresent() && (majorMaxIn.isPresent() || pitchMaxIn.isPresent());
  }

  /** Distance from thread to thread, inches. */
  public OptionalDouble pitchIn() {
    return threadsPerInch.isPresent()
        ? OptionalDouble.of(1 / threadsPerInch.getAsDouble())
        : OptionalDouble.empty();
  }
}
