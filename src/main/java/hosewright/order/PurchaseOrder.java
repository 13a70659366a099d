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
   * @param unitCost empty when no cost is in force: to be agreed
   */
  public record PurchaseLine(
      int position,
      String stockCode,
      String description,
      String unit,
      int needed,
      int quantity,
      int received,
      Optional<Money> unitCost) {

    public int outstanding() {
      return quantity - received;
    }
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
