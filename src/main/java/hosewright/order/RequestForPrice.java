package hosewright.order;

import hosewright.line.LinePlan.PlanItem;
import hosewright.quote.Quote;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something a quote needs that has no price, to be asked of suppliers.
 *
 * @param line 1 for the first
 * @param wanted what it is, in the words the quote names it by, without a count
 */
public record RequestForPrice(int line, String wanted, int quantity) {
  private static final Pattern COUNTED = Pattern.compile("(\\d{1,6}) x .*");

  /** What the quote still has no price for. */
  public static List<RequestForPrice> of(Quote quote) {
    List<RequestForPrice> asked = new ArrayList<>();
    for (String wanted : quote.stillToSource()) {
      asked.add(
          new RequestForPrice(asked.size() + 1, Quote.uncounted(wanted), quantity(quote, wanted)));
    }
    return asked;
  }

  private static int quantity(Quote quote, String wanted) {
    Matcher counted = COUNTED.matcher(wanted);
    if (counted.matches()) {
      return Integer.parseInt(counted.group(1));
    }
    return quote.plan().items().stream()
        .filter(item -> item.unitPrice().isEmpty() && wanted.startsWith(item.item() + " "))
        .mapToInt(PlanItem::quantity)
        .findFirst()
        .orElse(1);
  }
}
