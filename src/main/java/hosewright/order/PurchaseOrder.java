package hosewright.order;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What is bought from one supplier for one order.
 *
 * @param number gapless, for example P-000001
 * @param expectedOn the day the slowest line should be there
 * @param remark what to know, such as a minimum order met by buying more; may be empty
 */
public record PurchaseOrder(
    String number,
    String orderNumber,
    String supplier,
    String supplierName,
    LocalDate expectedOn,
    String remark,
    List<PurchaseLine> lines) {

  public PurchaseOrder {
    lines = List.copyOf(lines);
  }

  /**
   * One line.
   *
   * @param needed how many the order is short of
   * @param quantity how many are bought: whole packs, and more to reach a minimum order; what is
   *     over becomes free stock
   * @param cancelled no longer awaited
   * @param unitCost empty when no cost is in force: to be agreed
   */
  public record PurchaseLine(
      int position,
      Ware ware,
      int needed,
      int quantity,
      int received,
      int cancelled,
      Optional<Money> unitCost) {

    /** How many are still to come. */
    public int outstanding() {
      return quantity - received - cancelled;
    }

    /** This line for eyes that may not see its cost. */
    public PurchaseLine withoutCost() {
      return new PurchaseLine(
          position, ware, needed, quantity, received, cancelled, Optional.empty());
    }

    private PurchaseLine closed() {
      return new PurchaseLine(
          position, ware, needed, quantity, received, quantity - received, unitCost);
    }

    /** What is bought. */
    public record Ware(String stockCode, String description, String unit) {}
  }

  /** This purchase order under a number. */
  public PurchaseOrder numbered(String given) {
    return new PurchaseOrder(given, orderNumber, supplier, supplierName, expectedOn, remark, lines);
  }

  /** This purchase order when nothing more of it is awaited. */
  PurchaseOrder closed() {
    return new PurchaseOrder(
        number,
        orderNumber,
        supplier,
        supplierName,
        expectedOn,
        remark,
        lines.stream().map(PurchaseLine::closed).toList());
  }

  /** Where a purchase order stands. */
  public enum State {
    /** Nothing came yet. */
    OPEN,
    PART_RECEIVED,
    /** All that was bought came. */
    RECEIVED,
    /** Nothing more is awaited; some of it, or all, never came. */
    CLOSED
  }

  /** Where it stands. */
  public State state() {
    if (lines.stream().allMatch(line -> line.received() == line.quantity())) {
      return State.RECEIVED;
    }
    if (lines.stream().allMatch(line -> line.outstanding() == 0)) {
      return State.CLOSED;
    }
    return lines.stream().anyMatch(line -> line.received() > 0) ? State.PART_RECEIVED : State.OPEN;
  }

  /** What it comes to; empty when a cost is not known or they are in several currencies. */
  public Optional<Money> total() {
    if (lines.stream().anyMatch(line -> line.unitCost().isEmpty())) {
      return Optional.empty();
    }
    List<CurrencyUnit> currencies =
        lines.stream()
            .map(line -> line.unitCost().orElseThrow().getCurrencyUnit())
            .distinct()
            .toList();
    return currencies.size() == 1
        ? Optional.of(
            lines.stream()
                .map(line -> line.unitCost().orElseThrow().multipliedBy(line.quantity()))
                .reduce(Money.zero(currencies.get(0)), Money::plus))
        : Optional.empty();
  }
}
