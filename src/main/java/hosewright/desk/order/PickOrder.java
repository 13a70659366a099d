package hosewright.desk.order;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.order.BenchCard;
import hosewright.order.Order;
import hosewright.order.OrderGroup;
import hosewright.problem.ConflictException;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Finds what the store room picks for an order and what the bench makes of it. */
public final class PickOrder {
  private final Supplier<Books> books;

  public PickOrder(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What a pick slip is made of.
   *
   * @param quote the revision the order was raised from
   * @param groups what is picked, group by group
   * @param card what the bench makes
   * @param dealer name that stands on the slip
   */
  public record Picking(
      Order order, Quote quote, List<OrderGroup> groups, BenchCard card, String dealer) {}

  /**
   * The order with the work it needs.
   *
   * @param group number of the one group to pick; all of them without it
   * @throws ConflictException when it is cancelled
   */
  public Picking pick(String number, Optional<Integer> group) {
    try (Books open = books.get()) {
      Order order = Standing.now(OrderChoice.order(number, open), open);
      if (order.cancellation().isPresent()) {
        throw ConflictException.stateForbids(
            "order", order.number(), "is cancelled", "pick one that stands");
      }
      Quote quote =
          open.quotes()
              .find(order.sold().quoteNumber(), order.sold().quoteRevision())
              .orElseThrow();
      List<OrderGroup> groups =
          group
              .map(one -> List.of(Standing.group(one, order, open)))
              .orElseGet(() -> OrderGroup.of(order, quote));
      List<Group> made = groups.stream().map(one -> quote.basis().group(one.group())).toList();
      BenchCard card = BenchCard.of(order, quote, made, open.itemsOf(quote));
      return new Picking(order, quote, groups, card, Papers.dealer(open.terms()).name());
    }
  }
}
