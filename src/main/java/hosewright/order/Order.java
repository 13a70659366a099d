package hosewright.order;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a customer firmly ordered, where its goods stand and what was bought for it.
 *
 * @param number gapless, for example O-000001
 * @param cancellation who took it back, when and why; empty while it stands
 * @param purchases what was bought for it, one purchase order for each supplier
 */
public record Order(
    String number,
    Sold sold,
    Timing timing,
    Optional<Cancellation> cancellation,
    List<OrderLine> lines,
    List<PurchaseOrder> purchases) {

  public Order {
    lines = List.copyOf(lines);
    purchases = List.copyOf(purchases);
  }

  /** Who cancelled an order, when and why. */
  public record Cancellation(String by, Instant at, String reason) {}

  /** Where an order stands. */
  public enum State {
    /** Goods are still missing. */
    WAITING,
    /** Everything wanted and not shipped yet is reserved. */
    READY,
    PART_SHIPPED,
    SHIPPED,
    /** The customer wants none of it any more, and nothing had gone. */
    CANCELLED;

    /** As a person reads it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** This order with these purchase orders. */
  public Order with(List<PurchaseOrder> bought) {
    return as(cancellation, lines, bought);
  }

  /** This order as it can ship now. */
  public Order shippingOn(Optional<LocalDate> day) {
    return new Order(
        number,
        sold,
        new Timing(timing.raisedOn(), day, timing.raisedAt(), timing.raisedBy()),
        cancellation,
        lines,
        purchases);
  }

  /** Whether some of it is still to go. */
  public boolean isOpen() {
    return cancellation.isEmpty() && lines.stream().anyMatch(line -> line.open() > 0);
  }

  /** This order with these lines. */
  Order withLines(List<OrderLine> now) {
    return as(cancellation, now, purchases);
  }

  /** This order when nothing of it is wanted any more. */
  Order cancelled(Cancellation by) {
    return as(Optional.of(by), lines.stream().map(OrderLine::unwanted).toList(), purchases);
  }

  private Order as(
      Optional<Cancellation> how, List<OrderLine> nowLines, List<PurchaseOrder> bought) {
    return new Order(number, sold, timing, how, nowLines, bought);
  }

  /** Where it stands. */
  public State state() {
    if (cancellation.isPresent()) {
      return State.CANCELLED;
    }
    if (lines.stream().allMatch(line -> line.open() == 0)) {
      return State.SHIPPED;
    }
    if (lines.stream().anyMatch(line -> line.counts().shipped() > 0)) {
      return State.PART_SHIPPED;
    }
    return lines.stream().anyMatch(line -> line.shortage() > 0) ? State.WAITING : State.READY;
  }

  /**
   * What was sold to whom.
   *
   * @param quoteNumber the accepted quote it was raised from
   * @param customer the buyer's name
   */
  public record Sold(String quoteNumber, int quoteRevision, String customer, String title) {}

  /**
   * When it was raised, by whom, and when its goods can go.
   *
   * @param shipOn the earliest day everything can go, counted in calendar days when it was raised
   *     or last looked at; empty where nobody supplies some of it
   */
  public record Timing(
      LocalDate raisedOn, Optional<LocalDate> shipOn, Instant raisedAt, String raisedBy) {

    /** Where the day is known. */
    public Timing(LocalDate raisedOn, LocalDate shipOn, Instant raisedAt, String raisedBy) {
      this(raisedOn, Optional.of(shipOn), raisedAt, raisedBy);
    }
  }
}
