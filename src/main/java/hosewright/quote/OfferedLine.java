package hosewright.quote;

import java.util.Optional;

/**
 * A line beside the total.
 *
 * @param insteadOf position of the line an alternate would replace
 */
public record OfferedLine(
    ExtraLine.Inclusion standing, Optional<Integer> insteadOf, QuoteLine line) {

  /** Whether and for what the buyer may have it: {@code instead of line 3}. */
  public String words() {
    return insteadOf.map(position -> "instead of line " + position).orElse("optional");
  }
}
