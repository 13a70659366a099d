package hosewright.door.shell.order;

import hosewright.catalogue.MoneyWords;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.paper.order.Slip;
import hosewright.paper.order.Slip.Part;
import hosewright.quote.terms.Dealer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a supplier is sent for a purchase order. */
final class PurchaseSlip {
  private PurchaseSlip() {}

  /**
   * The slip.
   *
   * @param internal whether it says what is paid, for the dealer's own eyes
   */
  static Slip of(PurchaseOrder purchase, Dealer dealer, boolean internal) {
    List<String> columns =
        new ArrayList<>(List.of("Line", "Item", "Description", "Quantity", "Unit"));
    List<Integer> widths = new ArrayList<>(List.of(6, 22, 60, 10, 8));
    if (internal) {
      columns.addAll(List.of("Each", "Amount"));
      widths.addAll(List.of(14, 14));
    }
    boolean closed = purchase.state() == PurchaseOrder.State.CLOSED;
    List<List<String>> rows =
        purchase.lines().stream()
            .filter(line -> !closed || line.cancelled() > 0)
            .map(line -> row(line, closed ? line.cancelled() : line.quantity(), internal))
            .toList();
    List<String> remarks = new ArrayList<>();
    if (!closed) {
      purchase
          .freight()
          .ifPresent(agreed -> remarks.add("Freight as agreed: " + MoneyWords.of(agreed) + "."));
    }
    if (internal && !closed) {
      purchase.total().ifPresent(total -> remarks.add("In all " + MoneyWords.of(total) + "."));
    }
    return new Slip(
        "Purchase order " + purchase.number() + (closed ? ", cancelled" : ""),
        List.of(
            dealer.name() + ", " + String.join(", ", dealer.addressLines()),
            "To " + purchase.supplierName() + " (" + purchase.supplier() + ")",
            closed
                ? "Please deliver nothing more of it."
                : "Wanted on our dock by " + purchase.expectedOn()),
        List.of(
            new Part(
                closed ? "No longer to deliver" : "To deliver",
                columns,
                internal ? Set.of(0, 3, 5, 6) : Set.of(0, 3),
                widths,
                rows,
                remarks)));
  }

  private static List<String> row(PurchaseLine line, int quantity, boolean internal) {
    List<String> cells =
        new ArrayList<>(
            List.of(
                "" + line.position(),
                line.ware().stockCode(),
                line.ware().description(),
                "" + quantity,
                line.ware().unit()));
    if (internal) {
      cells.add(line.unitCost().map(MoneyWords::of).orElse("to be agreed"));
      cells.add(line.unitCost().map(cost -> MoneyWords.of(cost.multipliedBy(quantity))).orElse(""));
    }
    return cells;
  }
}
