package hosewright.line.model;

import java.util.Optional;

/**
 * One check on a plan, with what it was held against.
 *
 * @param figure the value found and its limit
 * @param note one sentence: what the number means or what to do
 * @param source where the limit comes from
 * @param leg the leg of the part that it comes to; empty where it is about the whole line
 */
public record Check(
    CheckId id, Outcome outcome, Figure figure, String note, String source, Optional<String> leg) {

  public Check(CheckId id, Outcome outcome, Figure figure, String note, String source) {
    this(id, outcome, figure, note, source, Optional.empty());
  }

  /** Of a part in a leg. */
  public Check in(String where) {
    return new Check(id, outcome, figure, note, source, Optional.of(where));
  }

  /** How a check came out. */
  public enum Outcome {
    PASS,
    WARN,
    FAIL
  }

  /**
   * A value and its limit.
   *
   * @param unit of both, for example psi; empty where there is only an outcome
   */
  public record Figure(double value, double limit, String unit) {}

  public String name() {
    return id.displayName();
  }

  public double value() {
    return figure.value();
  }

  public double limit() {
    return figure.limit();
  }

  public String unit() {
    return figure.unit();
  }

  /** Whether it is that check, and failed. */
  public boolean fails(CheckId which) {
    return id == which && outcome == Outcome.FAIL;
  }

  /** Whether it has no figure to show, only an outcome. */
  public boolean isYesOrNo() {
    return unit().isEmpty() && value() == Math.rint(value()) && limit() == Math.rint(limit());
  }
}
