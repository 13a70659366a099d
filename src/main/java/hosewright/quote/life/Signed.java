package hosewright.quote.life;

import hosewright.quote.Margin;
import java.time.Instant;

/**
 * One step of a quote's life, with who took it and when.
 *
 * @param note why, or what was agreed; may be empty
 * @param floor how it stood to the customer's margin floor when issued; for the dealer's eyes
 */
public record Signed(QuoteLife.Step step, String by, Instant at, String note, Margin.Floor floor) {

  public static Signed of(QuoteLife.Step step, String by, Instant at, String note) {
    return new Signed(step, by, at, note, Margin.Floor.KEPT);
  }

  /** This step, taken at another standing to the margin floor. */
  public Signed at(Margin.Floor standing) {
    return new Signed(step, by, at, note, standing);
  }
}
