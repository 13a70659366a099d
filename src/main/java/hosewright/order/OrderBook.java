package hosewright.order;

import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import java.time.Instant;
import java.util.Collection;
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

  /** What is there and comes, while nobody else can take it. */
  interface Shelves {

    /** Pieces on the shelf and promised to nobody, by stock code. */
    Map<String, Integer> free();

    /** What comes of some stock codes, and who waits for it. */
    Coming coming(Collection<String> stockCodes);
  }

  /** Makes the order, told its number and what is free. */
  interface Raiser {
    Order raise(String number, Shelves shelves);
  }

  /** Makes further purchase orders for an order, told who waits for what; not numbered yet. */
  interface Buyer {
    List<PurchaseOrder> buy(Order order, Coming coming);
  }

  /** What becomes of pieces beyond those that were bought. */
  enum Over {
    /** None may come. */
    REFUSED,
    /** They are kept, for the shelf. */
    TAKEN,
    /** They go back with the driver. */
    SENT_BACK
  }

  /** So many pieces that a line of an order got or lost. */
  record Change(String order, int line, String item, int pieces) {}

  /**
   * What came in.
   *
   * @param order the one it was bought for
   * @param served what lines were given of it, the oldest promise first
   */
  record Received(Order order, List<Change> served) {}

  /**
   * What came of a count.
   *
   * @param shortened promises there are no longer pieces for, the oldest first; the newest lost
   *     theirs first
   * @param served promises that pieces were found for, the oldest first
   */
  record Counted(
      String stockCode, int before, int after, List<Change> shortened, List<Change> served) {}

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
      return moved.in() == moved.out() + onHand && reserved == held && reserved <= onHand;
    }

    /**
     * What was counted, came and went.
     *
     * @param returned come back from customers
     * @param sentBack gone back to suppliers
     */
    public record Moved(int counted, int received, int shipped, int returned, int sentBack) {
      int in() {
        return counted + received + returned;
      }

      int out() {
        return shipped + sentBack;
      }
    }
  }

  /**
   * Raises an order, reserving its stock, in one step.
   *
   * @return the order with its purchase orders numbered
   * @throws BadInputException when the quote is not accepted any more, or has an order
   */
  Order raise(Quote accepted, Raiser raiser, Actor actor);

  /**
   * Takes in goods of a purchase order, for the oldest promise first.
   *
   * @param quantities pieces by line of the purchase order
   * @param over what becomes of more than was bought
   * @throws BadInputException naming every line of which more would come than was bought, where
   *     nobody said what becomes of it
   */
  Received receive(String purchaseNumber, Map<Integer, Integer> quantities, Over over, Actor actor);

  /**
   * Puts on record how many pieces somebody counted, whatever a file says.
   *
   * @param stockCode what has or had a shelf, or an item
   */
  Counted count(String stockCode, int pieces, Actor actor, String reason);

  /**
   * Takes back what went to the customer, for the shelf and the oldest promise there.
   *
   * @param quantities pieces by line of the order
   * @throws BadInputException naming every line of which less has gone
   */
  Order takeBack(String number, Map<Integer, Integer> quantities, Actor actor, String reason);

  /**
   * Cancels some pieces of an order that have not gone, and frees what they held.
   *
   * @param quantities pieces by line of the order
   * @throws BadInputException naming every line of which less is still to go
   */
  Order cancelLines(String number, Map<Integer, Integer> quantities, Actor actor, String reason);

  /** Buys more for an order; gives the order with all that was bought for it. */
  Order buy(String number, Buyer buyer, Actor actor);

  /** Who waits for the goods of an order, and what brings them. */
  Coming coming(Order order);

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
