package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ShowOrder;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.screen.Answer;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.PurchaseOrder.PurchaseLine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Shows an order: its lines, where their goods stand, what was bought for it. */
public final class OrderShowCommand extends ShellCommand {
  private final ShowOrder showOrder;

  public OrderShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order show",
                Group.BUY,
                "Shows an order, where its goods stand and what was bought for it",
                "order show O-000001")
            .with(OrderArgument.order(books))
            .with(OptionSpec.flag("internal", "with what purchases cost")));
    this.showOrder = new ShowOrder(books);
  }

  /** A line of an order, with what it is short of. */
  record Line(
      int position,
      int quotePosition,
      String item,
      String description,
      String unit,
      int quantity,
      int reserved,
      int shipped,
      int cancelled,
      int shortage) {
    static Line of(OrderLine line) {
      return new Line(
          line.position(),
          line.quotePosition(),
          line.item(),
          line.description(),
          line.unit(),
          line.quantity(),
          line.reserved(),
          line.shipped(),
          line.cancelled(),
          line.shortage());
    }
  }

  /** A line bought; its cost only where the dealer asked for it. */
  record Bought(
      int position,
      String stockCode,
      String description,
      int needed,
      int quantity,
      int received,
      int cancelled,
      Optional<Money> unitCost) {
    static Bought of(PurchaseLine line, boolean internal) {
      return new Bought(
          line.position(),
          line.stockCode(),
          line.description(),
          line.needed(),
          line.quantity(),
          line.received(),
          line.cancelled(),
          internal ? line.unitCost() : Optional.empty());
    }
  }

  record Purchase(
      String number,
      String supplier,
      String supplierName,
      PurchaseOrder.State state,
      LocalDate expectedOn,
      String remark,
      List<Bought> lines) {
    static Purchase of(PurchaseOrder purchase, boolean internal) {
      return new Purchase(
          purchase.number(),
          purchase.supplier(),
          purchase.supplierName(),
          purchase.state(),
          purchase.expectedOn(),
          purchase.remark(),
          purchase.lines().stream().map(line -> Bought.of(line, internal)).toList());
    }
  }

  record Shown(
      String number,
      String quoteNumber,
      int quoteRevision,
      String customer,
      String title,
      Order.State state,
      LocalDate raisedOn,
      LocalDate shipOn,
      String raisedBy,
      Optional<Order.Cancellation> cancellation,
      List<Line> lines,
      List<Purchase> purchases) {}

  @Override
  protected Answer answer(Invocation in) {
    return answer(showOrder.show(in.argument(0).orElseThrow()), in.flag("internal"));
  }

  /** An order as every command that changes one answers. */
  static Answer answer(Order order, boolean internal) {
    return Answer.of(shown(order, internal), screen -> OrderText.of(order, internal, screen));
  }

  /** An order's document. */
  static Shown shown(Order order, boolean internal) {
    return new Shown(
        order.number(),
        order.quoteNumber(),
        order.quoteRevision(),
        order.customer(),
        order.title(),
        order.state(),
        order.raisedOn(),
        order.shipOn(),
        order.raisedBy(),
        order.cancellation(),
        order.lines().stream().map(Line::of).toList(),
        order.purchases().stream().map(bought -> Purchase.of(bought, internal)).toList());
  }
}
