package hosewright.door.shell.order;

import hosewright.catalogue.MoneyWords;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/** An order as a person reads it at a terminal. */
final class OrderText {
  private OrderText() {}

  /**
   * @param internal whether to say what purchases cost
   */
  static String of(Order order, boolean internal, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "Order %s from %s revision %d, %s, for %s"
            .formatted(
                order.number(),
                order.sold().quoteNumber(),
                order.sold().quoteRevision(),
                order.state().word(),
                order.sold().customer()));
    prose.line(
        "%s; raised %s by %s; can ship %s"
            .formatted(
                order.sold().title(),
                order.timing().raisedOn(),
                order.timing().raisedBy(),
                order.timing().shipOn()));
    order
        .cancellation()
        .ifPresent(
            end ->
                prose.line(
                    "Cancelled by %s, %s: %s"
                        .formatted(
                            end.by(), end.at().truncatedTo(ChronoUnit.MINUTES), end.reason())));
    Table table =
        Table.of("#", "item", "description", "qty", "reserved", "shipped", "short")
            .numbers(0, 3, 4, 5, 6);
    for (OrderLine line : order.lines()) {
      table.row(
          line.position(),
          line.ware().item(),
          line.ware().description(),
          line.counts().quantity(),
          line.isGoods() ? line.counts().reserved() : "-",
          line.counts().shipped(),
          line.isGoods() ? line.shortage() : "-");
    }
    prose.block(table.on(screen));
    for (PurchaseOrder purchase : order.purchases()) {
      purchase(prose, purchase, internal, screen);
    }
    for (OrderLine line : order.lines()) {
      if (unsupplied(order, line) > 0) {
        prose.line(
            "Nobody is asked for %d of line %d, %s: buy it by hand."
                .formatted(unsupplied(order, line), line.position(), line.ware().description()));
      }
    }
    return prose.toString();
  }

  /** How many a line is short of that no purchase order will bring. */
  static int unsupplied(Order order, OrderLine line) {
    int coming =
        order.purchases().stream()
            .flatMap(purchase -> purchase.lines().stream())
            .filter(bought -> bought.ware().stockCode().equals(line.ware().stockCode()))
            .mapToInt(PurchaseLine::outstanding)
            .sum();
    return line.isGoods() ? Math.max(0, line.shortage() - coming) : 0;
  }

  private static void purchase(
      Prose prose, PurchaseOrder purchase, boolean internal, Screen screen) {
    prose.line(
        "%s from %s (%s), %s%s"
            .formatted(
                purchase.number(),
                purchase.supplierName(),
                purchase.supplier(),
                standing(purchase),
                purchase.remark().isEmpty() ? "" : "; " + purchase.remark()));
    Table table =
        internal
            ? Table.of("#", "item", "description", "needed", "bought", "received", "each")
                .numbers(0, 3, 4, 5, 6)
            : Table.of("#", "item", "description", "needed", "bought", "received")
                .numbers(0, 3, 4, 5);
    for (PurchaseLine line : purchase.lines()) {
      Object[] cells = {
        line.position(),
        line.ware().stockCode(),
        line.ware().description(),
        line.needed(),
        line.quantity(),
        line.received()
      };
      table.row(internal ? with(cells, line.unitCost().map(MoneyWords::of).orElse("ask")) : cells);
    }
    prose.block(table.on(screen));
  }

  private static String standing(PurchaseOrder purchase) {
    return switch (purchase.state()) {
      case OPEN, PART_RECEIVED -> "expected " + purchase.expectedOn();
      case RECEIVED -> "received";
      case CLOSED -> "closed: nothing more is awaited";
    };
  }

  private static Object[] with(Object[] cells, Object last) {
    Object[] all = Arrays.copyOf(cells, cells.length + 1);
    all[cells.length] = last;
    return all;
  }
}
