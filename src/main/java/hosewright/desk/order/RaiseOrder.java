package hosewright.desk.order;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.desk.quote.QuoteChoice;
import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.Raising;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import java.util.function.Supplier;

/**
 * Raises an order from an accepted quote: reserves what is free, counts on what comes and nobody
 * waits for, and buys the rest.
 */
public final class RaiseOrder {
  private final Supplier<Books> books;

  public RaiseOrder(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The order, with its purchase orders numbered.
   *
   * @param quote the latest revision of a quote
   * @param topUp whether more is bought where that reaches a supplier's minimum
   * @param by who raises it
   * @throws hosewright.problem.BadInputException when the quote is not accepted, or has an order
   */
  public Standing raise(String quote, boolean topUp, String by) {
    try (Books open = books.get()) {
      Quote accepted = QuoteChoice.latest(quote, open);
      QuoteLife.take(accepted, Step.ORDER);
      Actor actor = Signing.actor(by, open.now());
      Catalogue catalogue = open.itemsOf(accepted);
      Raising raising =
          new Raising(catalogue, open.orders().answers(accepted.number()), open.today(), topUp);
      Order raised =
          open.orders()
              .raise(
                  accepted,
                  (number, shelves) ->
                      raising.raise(number, accepted, shelves, actor.at(), actor.name()),
                  actor);
      return Standing.of(raised, open);
    }
  }
}
