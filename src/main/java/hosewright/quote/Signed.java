package hosewright.quote;

import java.time.Instant;

/**
 * One step of a quote's life, with who took it and when.
 *
 * @param note why, or what was agreed; may be empty
 * @param belowFloor whether it was issued under the customer's margin floor; for the dealer's eyes
 */
public record Signed(QuoteLife.Step step, String by, Instant at, String note, boolean belowFloor) {

  public static Signed of(QuoteLife.Step step, String by, Instant at, String note) {
    return new Signed(step, by, at, note, false);
  }

  public Signed markedBelowFloor() {
    return new Signed(step, by, at, note, true);
  }
}
