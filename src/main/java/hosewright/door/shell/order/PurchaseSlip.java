package hosewright.door.shell.order;

import hosewright.desk.order.ShowPurchase.Purchase;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import hosewright.paper.order.Slip;
import hosewright.paper.order.Slip.Part;
import hosewright.paper.page.PrintedMoney;
import hosewright.quote.terms.Dealer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;
import org.joda.money.Money;

/** What a supplier is sent for a purchase order. */
final class PurchaseSlip {
  private static final String SIGN =
      "Name ______________________   Signature ______________________   Date ____________";

  private PurchaseSlip() {}

  /**
   * The slip. It never says for which buyer the goods are.
   *
   * @param prices whether it says what is paid
   */
  static Slip of(Purchase purchase, boolean prices) {
    PurchaseOrder order = purchase.order();
    boolean closed = order.state() == PurchaseOrder.State.CLOSED;
    List<Part> parts = new ArrayList<>();
    parts.add(goods(order, prices, closed));
    if (!closed) {
      List<String> terms = terms(purchase);
      if (!terms.isEmpty()) {
        parts.add(Part.of("Terms", terms));
      }
    }
    parts.add(Part.of("Signed for " + purchase.dealer().name(), List.of(SIGN)));
    return new Slip(
        "Purchase order " + order.number() + (closed ? ", cancelled" : ""),
        facts(purchase, closed),
        parts);
  }

  private static List<String> facts(Purchase purchase, boolean closed) {
    Dealer dealer = purchase.dealer();
    PurchaseOrder order = purchase.order();
    String address = String.join(", ", dealer.addressLines());
    List<String> facts = new ArrayList<>();
    facts.add(dealer.name() + ", " + address);
    facts.add("Questions to " + dealer.phone() + ", " + dealer.email());
    facts.add("To " + order.supplierName() + " (" + order.supplier() + ")");
    facts.add("Date " + purchase.date());
    if (closed) {
      facts.add("Please deliver nothing more of it.");
    } else {
      facts.add("Wanted on our dock by " + order.expectedOn());
      facts.add(
          "Deliver to "
              + (purchase.terms().delivery().isEmpty()
                  ? dealer.name() + ", " + address
                  : purchase.terms().delivery()));
    }
    return facts;
  }

  private static List<String> terms(Purchase purchase) {
    List<String> terms = new ArrayList<>();
    if (!purchase.terms().terms().isEmpty()) {
      terms.add(purchase.terms().terms());
    }
    if (!purchase.order().remark().isEmpty()) {
      terms.add(StringUtils.capitalize(purchase.order().remark()) + ".");
    }
    return terms;
  }

  private static Part goods(PurchaseOrder order, boolean prices, boolean closed) {
    List<String> columns =
        new ArrayList<>(List.of("Line", "Item", "Description", "Quantity", "Unit"));
    List<Integer> widths = new ArrayList<>(List.of(6, 22, 60, 10, 8));
    Optional<String> currency = currency(order);
    if (prices) {
      String code = currency.map(one -> " " + one).orElse("");
      columns.addAll(List.of("Each" + code, "Amount" + code));
      widths.addAll(List.of(14, 14));
    }
    List<List<String>> rows =
        order.lines().stream()
            .filter(line -> !closed || line.cancelled() > 0)
            .map(
                line ->
                    row(
                        line,
                        closed ? line.cancelled() : line.quantity(),
                        prices,
                        currency.isPresent()))
            .toList();
    List<String> remarks = new ArrayList<>();
    if (!closed) {
      order
          .freight()
          .ifPresent(
              agreed -> remarks.add("Freight as agreed: " + PrintedMoney.words(agreed) + "."));
    }
    if (prices && !closed) {
      order.total().ifPresent(total -> remarks.add("In all " + PrintedMoney.words(total) + "."));
    }
    return new Part(
        closed ? "No longer to deliver" : "To deliver",
        columns,
        prices ? Set.of(0, 3, 5, 6) : Set.of(0, 3),
        widths,
        rows,
        remarks);
  }

  /** The one currency of all costs; empty where there are several or none. */
  private static Optional<String> currency(PurchaseOrder order) {
    List<String> codes =
        order.lines().stream()
            .flatMap(line -> line.unitCost().stream())
            .map(cost -> cost.getCurrencyUnit().getCode())
            .distinct()
            .toList();
    return codes.size() == 1 ? Optional.of(codes.get(0)) : Optional.empty();
  }

  private static List<String> row(
      PurchaseLine line, int quantity, boolean prices, boolean oneCurrency) {
    List<String> cells =
        new ArrayList<>(
            List.of(
                "" + line.position(),
                line.ware().stockCode(),
                line.ware().description(),
                "" + quantity,
                line.ware().unit()));
    if (prices) {
      cells.add(line.unitCost().map(cost -> words(cost, oneCurrency)).orElse("to be agreed"));
      cells.add(
          line.unitCost().map(cost -> words(cost.multipliedBy(quantity), oneCurrency)).orElse(""));
    }
    return cells;
  }

  private static String words(Money money, boolean bare) {
    return bare ? money.getAmount().toPlainString() : PrintedMoney.words(money);
  }
}
