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
 */
public record PurchaseOrder(
    String number,
    String orderNumber,
    String supplier,
    String supplierName,
    Terms terms,
    List<PurchaseLine> lines) {

  public PurchaseOrder {
    lines = List.copyOf(lines);
  }

  /** One for which no freight was agreed. */
  public PurchaseOrder(
      String number,
      String orderNumber,
      String supplier,
      String supplierName,
      LocalDate expectedOn,
      String remark,
      List<PurchaseLine> lines) {
    this(
        number,
        orderNumber,
        supplier,
        supplierName,
        new Terms(expectedOn, remark, Optional.empty()),
        lines);
  }

  /**
   * What was agreed on for all of it.
   *
   * @param expectedOn the day the slowest line should be there
   * @param remark what to know, such as a minimum order met by buying more; may be empty
   * @param freight what the supplier asks for carriage; empty where nothing was agreed
   */
  public record Terms(LocalDate expectedOn, String remark, Optional<Money> freight) {}

  public LocalDate expectedOn() {
    return terms.expectedOn();
  }

  public String remark() {
    return terms.remark();
  }

  public Optional<Money> freight() {
    return terms.freight();
  }

  /** This purchase order with these lines. */
  PurchaseOrder with(List<PurchaseLine> now) {
    return new PurchaseOrder(number, orderNumber, supplier, supplierName, terms, now);
  }

  /** This purchase order with another remark. */
  PurchaseOrder remarked(String other) {
    return new PurchaseOrder(
        number,
        orderNumber,
        supplier,
        supplierName,
        new Terms(terms.expectedOn(), other, terms.freight()),
        lines);
  }

  /**
   * One line.
   *
   * @param unitCost empty when no cost is in force: to be agreed
   */
  public record PurchaseLine(int position, Ware ware, Counts counts, Optional<Money> unitCost) {

    /** One of which no more came than was bought. */
    public PurchaseLine(
        int position,
        Ware ware,
        int needed,
        int quantity,
        int received,
        int cancelled,
        Optional<Money> unitCost) {
      this(position, ware, new Counts(needed, quantity, received, cancelled, 0), unitCost);
    }

    /**
     * How many are bought and where they stand.
     *
     * @param needed how many the order is short of
     * @param quantity how many are bought: whole packs, and more to reach a minimum order; what is
     *     over becomes free stock
     * @param received of those bought
     * @param cancelled no longer awaited
     * @param overTaken came beyond those bought and were kept
     */
    public record Counts(int needed, int quantity, int received, int cancelled, int overTaken) {}

    public int needed() {
      return counts.needed();
    }

    public int quantity() {
      return counts.quantity();
    }

    public int received() {
      return counts.received();
    }

    public int cancelled() {
      return counts.cancelled();
    }

    /** How many are still to come. */
    public int outstanding() {
      return quantity() - received() - cancelled();
    }

    /** This line for eyes that may not see its cost. */
    public PurchaseLine withoutCost() {
      return new PurchaseLine(position, ware, counts, Optional.empty());
    }

    private PurchaseLine closed() {
      return new PurchaseLine(
          position,
          ware,
          new Counts(needed(), quantity(), received(), quantity() - received(), counts.overTaken()),
          unitCost);
    }

    /** What is bought. */
    public record Ware(String stockCode, String description, String unit) {}
  }

  /** This purchase order under a number. */
  public PurchaseOrder numbered(String given) {
    return new PurchaseOrder(given, orderNumber, supplier, supplierName, terms, lines);
  }

  /** This purchase order when nothing more of it is awaited. */
  PurchaseOrder closed() {
    return with(lines.stream().map(PurchaseLine::closed).toList());
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

  /**
   * What it comes to with its freight; empty when a cost is not known or they are in several
   * currencies.
   */
  public Optional<Money> total() {
    return goods()
        .filter(sum -> freight().isEmpty() || freight().get().isSameCurrency(sum))
        .map(sum -> freight().map(sum::plus).orElse(sum));
  }

  /** What its goods come to; empty as {@link #total}. */
  public Optional<Money> goods() {
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
