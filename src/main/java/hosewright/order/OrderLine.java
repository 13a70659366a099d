package hosewright.order;

/**
 * One line of an order.
 *
 * @param quotePosition the line of the quote it comes from
 */
public record OrderLine(int position, int quotePosition, Ware ware, Counts counts) {

  /** This line with so many more reserved for it. */
  public OrderLine reserving(int more) {
    return moved(counts.reserved() + more, counts.shipped(), counts.cancelled());
  }

  /** This line when so many of what was reserved have gone. */
  public OrderLine shipping(int gone) {
    return moved(counts.reserved() - gone, counts.shipped() + gone, counts.cancelled());
  }

  /** This line of work, done, which counts as shipped. */
  public OrderLine done() {
    return moved(0, counts.quantity() - counts.cancelled(), counts.cancelled());
  }

  /** This line when nothing more of it is wanted. */
  OrderLine unwanted() {
    return moved(0, counts.shipped(), counts.quantity() - counts.shipped());
  }

  private OrderLine moved(int nowReserved, int nowShipped, int nowCancelled) {
    return new OrderLine(
        position,
        quotePosition,
        ware,
        new Counts(counts.quantity(), nowReserved, nowShipped, nowCancelled));
  }

  /** Whether there is something to keep, buy, pick and ship. */
  public boolean isGoods() {
    return !ware.stockCode().isEmpty();
  }

  /** How many are wanted and neither shipped nor on the shelf for it. */
  public int shortage() {
    return isGoods()
        ? counts.quantity() - counts.reserved() - counts.shipped() - counts.cancelled()
        : 0;
  }

  /**
   * What is ordered.
   *
   * @param stockCode what it is kept under; empty for work and free text, of which none is kept
   */
  public record Ware(String stockCode, String item, String description, String unit) {}

  /**
   * How many are ordered and where they stand.
   *
   * @param reserved on the shelf and promised to this line
   * @param shipped gone to the customer
   * @param cancelled no longer wanted
   */
  public record Counts(int quantity, int reserved, int shipped, int cancelled) {}
}
