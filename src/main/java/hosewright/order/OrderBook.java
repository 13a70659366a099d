package hosewright.order;

import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where orders are kept, with the stock they reserve. Whoever changes stock waits for whoever is
 * changing it, so that two orders never promise the same piece.
 */
public interface OrderBook {

  /** Who does something, and when. */
  record Actor(String name, Instant at) {}

  /** Makes the order, told its number and what is free. */
  interface Raiser {
    Order raise(String number, Map<String, Integer> free);
  }

  /**
   * What a shelf holds: everything that came and went, and what is promised.
   *
   * @param reserved promised, as the shelf has it
   * @param held promised, as the lines of the orders have it
   */
  record StockLine(String stockCode, Moved moved, int onHand, int reserved, int held, int onOrder) {

    /** On the shelf and promised to nobody. */
    public int free() {
      return onHand - reserved;
    }

    /** Whether stock in is stock out and on hand, and no promise is lost or made twice. */
    public boolean balances() {
      return moved.counted() + moved.received() == moved.shipped() + onHand && reserved == held;
    }

    /** What was counted, came and went. */
    public record Moved(int counted, int received, int shipped) {}
  }

  /**
   * Raises an order, reserving its stock, in one step.
   *
   * @return the order with its purchase orders numbered
   * @throws BadInputException when the quote is not accepted any more, or has an order
   */
  Order raise(Quote accepted, Raiser raiser, Actor actor);

  /**
   * Takes in goods of a purchase order, for its order first.
   *
   * @param quantities pieces by line of the purchase order
   * @throws BadInputException naming every line of which more would come than was bought
   */
  Order receive(String purchaseNumber, Map<Integer, Integer> quantities, Actor actor);

  /**
   * Ships reserved goods; work counts as shipped with the last of them.
   *
   * @param quantities pieces by line of the order
   * @throws BadInputException naming every line of which less is reserved
   */
  Order ship(String number, Map<Integer, Integer> quantities, Actor actor);

  /**
   * Cancels a whole order of which nothing has gone yet, and frees what it held, in one step.
   *
   * @param bought what becomes of what was bought for it and has not come
   * @throws BadInputException when it cannot be cancelled so; nothing has changed then
   */
  Cancelled cancel(String number, Cancelled.Bought bought, Actor actor, String reason);

  /** Reserves for an order what has become free since it was raised. */
  Order reserve(String number);

  Optional<Order> find(String number);

  /** The order a purchase order was made for. */
  Optional<Order> findByPurchase(String purchaseNumber);

  /** Every order, newest first. */
  List<Order> list();

  /** Every shelf that ever held something, by stock code. */
  List<StockLine> stock();

  /** The answers of suppliers to what a quote asked for. */
  List<SupplierAnswer> answers(String quoteNumber);

  /** Puts answers in the place of those kept for the same wants. */
  void keepAnswers(String quoteNumber, List<SupplierAnswer> answers, Actor actor);
}
