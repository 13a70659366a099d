package hosewright.quote;

import hosewright.line.model.Bill;
import java.util.List;
import java.util.Locale;

/** Where the quantities of a quote, changed by hand, part ways with what its plan is drawn for. */
public final class Departures {
  private Departures() {}

  /** A sentence for each item that is sold in another number than the plan buys. */
  public static List<String> of(Quote quote) {
    return quote.groups().stream().flatMap(group -> of(quote, group).stream()).toList();
  }

  /** The same for one group, as often as it is sold. */
  public static List<String> of(Quote quote, Group group) {
    return group.plan().items().stream()
        .filter(item -> item.unitPrice().isPresent())
        .filter(item -> sold(quote, group, item.item()) != item.quantity() * group.count())
        .map(item -> sentence(quote, group, item))
        .toList();
  }

  private static String sentence(Quote quote, Group group, Bill.Item item) {
    return String.format(
        Locale.ROOT,
        "%s: %d sold, %d planned; drawing, joints and the list to assemble show the plan.",
        item.item(),
        sold(quote, group, item.item()),
        item.quantity() * group.count());
  }

  /** How many of an item the lines of one group sell. */
  public static int sold(Quote quote, Group group, String item) {
    return quote.lines(group).stream()
        .filter(line -> line.goods().item().equals(item))
        .mapToInt(QuoteLine::quantity)
        .sum();
  }
}
