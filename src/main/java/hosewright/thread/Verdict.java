package hosewright.thread;

/**
 * What happens when two ends are put together.
 *
 * @param outcome whether they mate, jam, do not fit, or must be measured first
 * @param seal what keeps the joint tight; {@link Seal#NONE} unless the outcome is {@link
 *     Outcome#MATES}
 * @param removable whether the joint is meant to come apart again
 * @param engagement what the hands feel, for example "grabs one or two turns, then jams"; empty
 *     when there is nothing to say
 * @param reason one sentence that a buyer understands
 * @param source the standard, handbook or practice the verdict rests on
 */
public record Verdict(
    Outcome outcome,
    Seal seal,
    boolean removable,
    String engagement,
    String reason,
    String source) {

  /** How a pair of ends behaves. */
  public enum Outcome {
    MATES,
    JAMS,
    NO,
    MEASURE
  }

  /** What keeps a joint tight. */
  public enum Seal {
    /** One gasket in the receiving half. */
    GASKET,
    /** The threads themselves, with sealant. */
    THREAD,
    /** Faces drawn together: the gaskets of sexless halves, or the bare seat of NPSM. */
    LUG,
    NONE
  }

  public boolean mates() {
    return outcome == Outcome.MATES;
  }
}
