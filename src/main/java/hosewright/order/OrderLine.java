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

  /** This line when so many of what has gone came back. */
  public OrderLine returning(int back) {
    return new OrderLine(
        position,
        quotePosition,
        ware,
        new Counts(
            counts.quantity(),
            counts.reserved(),
            counts.shipped(),
            counts.cancelled(),
            counts.returned() + back));
  }

  /** This line when so many fewer are wanted; what waits goes before what lies there for it. */
  public OrderLine cancelling(int fewer) {
    int freed = Math.max(0, fewer - shortage());
    return moved(
        Math.max(0, counts.reserved() - freed), counts.shipped(), counts.cancelled() + fewer);
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
        new Counts(counts.quantity(), nowReserved, nowShipped, nowCancelled, counts.returned()));
  }

  /** Whether there is something to keep, buy, pick and ship. */
  public boolean isGoods() {
    return !ware.stockCode().isEmpty();
  }

  /** Whether none of it is wanted any more. */
  public boolean isCancelled() {
    return counts.cancelled() == counts.quantity();
  }

  /** How many are wanted and have not gone. */
  public int open() {
    return counts.quantity() - counts.shipped() - counts.cancelled();
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
   * @param returned of those shipped, come back from the customer
   */
  public record Counts(int quantity, int reserved, int shipped, int cancelled, int returned) {

    /** Where nothing has come back. */
    public Counts(int quantity, int reserved, int shipped, int cancelled) {
      this(quantity, reserved, shipped, cancelled, 0);
    }
  }
}
