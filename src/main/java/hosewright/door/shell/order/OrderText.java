package hosewright.door.shell.order;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.order.Standing;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.order.Order;
import hosewright.order.OrderGroup;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;

/** An order as a person reads it at a terminal. */
final class OrderText {
  private OrderText() {}

  /**
   * @param internal whether to say what purchases cost
   */
  static String of(Standing standing, boolean internal, Screen screen) {
    Order order = standing.order();
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
        "%s; raised %s by %s%s"
            .formatted(
                order.sold().title(),
                order.timing().raisedOn(),
                order.timing().raisedBy(),
                order.isOpen() ? "; " + ships(order) : ""));
    order
        .cancellation()
        .ifPresent(
            end ->
                prose.line(
                    "Cancelled by %s, %s: %s"
                        .formatted(
                            end.by(), end.at().truncatedTo(ChronoUnit.MINUTES), end.reason())));
    if (standing.groups().size() > 1) {
      for (OrderGroup group : standing.groups()) {
        prose.block(
            group.group() + ". " + group.words() + "\n" + lines(group.of(order)).on(screen));
      }
    } else {
      prose.block(lines(order.lines()).on(screen));
    }
    for (OrderLine line : order.lines()) {
      if (order.cancellation().isEmpty() && line.counts().cancelled() > 0) {
        prose.line(
            "%d of line %d are cancelled.".formatted(line.counts().cancelled(), line.position()));
      }
      if (line.counts().returned() > 0) {
        prose.line("%d of line %d came back.".formatted(line.counts().returned(), line.position()));
      }
    }
    for (PurchaseOrder purchase : order.purchases()) {
      purchase(prose, purchase, internal, screen);
    }
    order.lines().forEach(line -> elsewhere(prose, standing, line));
    for (OrderLine line : order.lines()) {
      int lacking = standing.unsupplied(line.position());
      if (lacking > 0) {
        prose.line(
            "Nobody is asked for %d of line %d, %s: 'order buy %s' buys it."
                .formatted(lacking, line.position(), line.ware().description(), order.number()));
      }
    }
    return prose.toString();
  }

  /** The day an order can ship, or that nobody can say. */
  static String ships(Order order) {
    return order
        .timing()
        .shipOn()
        .map(day -> "can ship " + day)
        .orElse("ship date open, since nobody supplies some of it");
  }

  /** What comes for a line with a purchase order that was made for another order. */
  private static void elsewhere(Prose prose, Standing standing, OrderLine line) {
    Order order = standing.order();
    List<String> own = order.purchases().stream().map(PurchaseOrder::number).toList();
    standing.coming().serving(order.number(), line.position()).stream()
        .filter(load -> !own.contains(load.purchase()))
        .forEach(
            load ->
                prose.line(
                    "%d of line %d come with %s, expected %s."
                        .formatted(
                            load.quantity(), line.position(), load.purchase(), load.expectedOn())));
  }

  private static Table lines(List<OrderLine> lines) {
    Table table =
        Table.of("#", "item", "description", "qty", "reserved", "shipped", "short")
            .numbers(0, 3, 4, 5, 6);
    for (OrderLine line : lines) {
      table.row(
          line.position(),
          line.ware().item(),
          line.ware().description(),
          line.counts().quantity(),
          line.isGoods() ? line.counts().reserved() : "-",
          line.counts().shipped(),
          line.isGoods() ? line.shortage() : "-");
    }
    return table;
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
    for (PurchaseLine line : purchase.lines()) {
      if (line.counts().overTaken() > 0) {
        prose.line(
            "%d more of line %d came than were bought, and were kept."
                .formatted(line.counts().overTaken(), line.position()));
      }
    }
    if (internal) {
      purchase
          .freight()
          .ifPresent(agreed -> prose.line("Freight as agreed: " + MoneyWords.of(agreed)));
    }
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
