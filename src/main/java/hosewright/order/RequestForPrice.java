package hosewright.order;

import hosewright.line.model.Unpriced;
import hosewright.quote.Quote;
import java.util.ArrayList;
import java.util.List;

/**
 * Something a quote needs that has no price, to be asked of suppliers.
 *
 * @param line 1 for the first
 * @param wanted what it is, in the words the quote names it by, without a count
 */
public record RequestForPrice(int line, String wanted, int quantity) {

  /** What the quote still has no price for. */
  public static List<RequestForPrice> of(Quote quote) {
    List<RequestForPrice> asked = new ArrayList<>();
    for (Unpriced lacking : quote.stillToSource()) {
      asked.add(
          new RequestForPrice(asked.size() + 1, lacking.what(), Math.max(1, lacking.quantity())));
    }
    return asked;
  }
}
