package hosewright.line.model;

import hosewright.thread.End;
import hosewright.thread.Verdict;

/**
 * Two ends put together.
 *
 * @param leg name of the leg it lies in
 * @param count like joints that follow one another, as between like sections
 */
public record Joint(String leg, Side upstream, Side downstream, int count, Fit fit) {

  /**
   * One side of it.
   *
   * @param part a short name: {@code section 3}, {@code reducer}
   * @param item item number; empty where the part has none
   */
  public record Side(End end, String part, String item) {}

  /** How the two go together. */
  public record Fit(
      Verdict.Outcome verdict, Verdict.Seal seal, boolean removable, String reason, String source) {

    public static Fit of(Verdict verdict) {
      return new Fit(
          verdict.outcome(),
          verdict.seal(),
          verdict.removable(),
          verdict.reason(),
          verdict.source());
    }
  }
}
