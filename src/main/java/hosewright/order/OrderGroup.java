package hosewright.order;

import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What of an order belongs to one group of its quote.
 *
 * @param group its number on the quote
 * @param lines positions of the order's lines in it
 */
public record OrderGroup(int group, String title, int count, List<Integer> lines) {
  public OrderGroup {
    lines = List.copyOf(lines);
  }

  /** The groups of an order, in the order of its quote; those offered alone are not ordered. */
  public static List<OrderGroup> of(Order order, Quote quote) {
    return quote.groups().stream()
        .map(group -> of(order, quote, group))
        .filter(group -> !group.lines().isEmpty())
        .toList();
  }

  private static OrderGroup of(Order order, Quote quote, Group group) {
    Set<Integer> sold =
        quote.lines().stream()
            .filter(line -> line.group() == group.number())
            .map(QuoteLine::position)
            .collect(Collectors.toSet());
    return new OrderGroup(
        group.number(),
        group.title(),
        group.count(),
        order.lines().stream()
            .filter(line -> sold.contains(line.quotePosition()))
            .map(OrderLine::position)
            .toList());
  }

  /** As papers name it: {@code 2 x Engine set}. */
  public String words() {
    return new Group.Heading(title, count, false).words();
  }

  /** Its lines of the order. */
  public List<OrderLine> of(Order order) {
    return order.lines().stream().filter(line -> lines.contains(line.position())).toList();
  }
}
