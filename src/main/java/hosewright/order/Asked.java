package hosewright.order;

import hosewright.line.Unpriced;
import hosewright.quote.Quote;
import java.util.ArrayList;
import java.util.List;

/**
 * Something a quote needs that has no price, to be asked of suppliers.
 *
 * @param line 1 for the first
 * @param wanted what it is, in the words the quote names it by, without a count
 */
public record Asked(int line, String wanted, int quantity) {

  /** What the quote still has no price for. */
  public static List<Asked> of(Quote quote) {
    List<Asked> asked = new ArrayList<>();
    for (Unpriced lacking : quote.stillToSource()) {
      asked.add(new Asked(asked.size() + 1, lacking.what(), Math.max(1, lacking.quantity())));
    }
    return asked;
  }
}
