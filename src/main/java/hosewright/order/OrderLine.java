package hosewright.order;

/**
 * One line of an order.
 *
 * @param quotePosition the line of the quote it comes from
 * @param stockCode what it is kept under; empty for work and free text, of which none is kept
 * @param reserved on the shelf and promised to this line
 * @param shipped gone to the customer
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
    int shipped) {

  /** Whether there is something to keep, buy, pick and ship. */
  public boolean isGoods() {
    return !stockCode.isEmpty();
  }

  /** How many are neither shipped nor on the shelf for it. */
  public int shortage() {
    return isGoods() ? quantity - reserved - shipped : 0;
  }
}
