package hosewright.order;

/**
 * One line of an order.
 *
 * @param quotePosition the line of the quote it comes from
 * @param stockCode what it is kept under; empty for work and free text, of which none is kept
 * @param reserved on the shelf and promised to this line
 * @param shipped gone to the customer
 * @param cancelled no longer wanted
 */
public record OrderLine(
    int position,
    int quotePosition,
    String stockCode,
    String item,
    String description,
    String unit,
    int quantity,
    int reserved,
    int shipped,
    int cancelled) {

  /** This line with so many more reserved for it. */
  public OrderLine reserving(int more) {
    return moved(reserved + more, shipped, cancelled);
  }

  /** This line when so many of what was reserved have gone. */
  public OrderLine shipping(int gone) {
    return moved(reserved - gone, shipped + gone, cancelled);
  }

  /** This line of work, done, which counts as shipped. */
  public OrderLine done() {
    return moved(0, quantity - cancelled, cancelled);
  }

  /** This line when nothing more of it is wanted. */
  OrderLine unwanted() {
    return moved(0, shipped, quantity - shipped);
  }

  private OrderLine moved(int nowReserved, int nowShipped, int nowCancelled) {
    return new OrderLine(
        position,
        quotePosition,
        stockCode,
        item,
        description,
        unit,
        quantity,
        nowReserved,
        nowShipped,
        nowCancelled);
  }

  /** Whether there is something to keep, buy, pick and ship. */
  public boolean isGoods() {
    return !stockCode.isEmpty();
  }

  /** How many are wanted and neither shipped nor on the shelf for it. */
  public int shortage() {
    return isGoods() ? quantity - reserved - shipped - cancelled : 0;
  }
}
