package hosewright.door.shell.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.order.ShowOrder;
import hosewright.desk.order.Standing;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.screen.Answer;
import hosewright.order.Order;
import hosewright.order.OrderGroup;
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

  /**
   * A line of an order, with what it is short of.
   *
   * @param unsupplied how many of that nobody is asked for
   */
  record Line(@JsonUnwrapped OrderLine line, int shortage, int unsupplied) {}

  /** What was bought; what it cost only where the dealer asked for it. */
  record Purchase(
      String number,
      @JsonUnwrapped Seller seller,
      PurchaseOrder.State state,
      LocalDate expectedOn,
      String remark,
      Optional<Money> freight,
      List<PurchaseLine> lines) {
    static Purchase of(PurchaseOrder purchase, boolean internal) {
      return new Purchase(
          purchase.number(),
          new Seller(purchase.supplier(), purchase.supplierName()),
          purchase.state(),
          purchase.expectedOn(),
          purchase.remark(),
          purchase.freight().filter(agreed -> internal),
          internal
              ? purchase.lines()
              : purchase.lines().stream().map(PurchaseLine::withoutCost).toList());
    }
  }

  /** Whom a purchase is made from. */
  record Seller(String supplier, String supplierName) {}

  record Shown(
      String number,
      @JsonUnwrapped Order.Sold sold,
      Order.State state,
      @JsonUnwrapped Order.Timing timing,
      Optional<Order.Cancellation> cancellation,
      @JsonUnwrapped Goods goods) {}

  /**
   * What is ordered and what was bought for it.
   *
   * @param groups which lines belong to which group of the quote
   */
  record Goods(List<Line> lines, List<Purchase> purchases, List<OrderGroup> groups) {}

  @Override
  protected Answer answer(Invocation in) {
    return answer(showOrder.show(in.argument(0).orElseThrow()), in.flag("internal"));
  }

  /** An order as every command that changes one answers. */
  static Answer answer(Standing standing, boolean internal) {
    return Answer.of(shown(standing, internal), screen -> OrderText.of(standing, internal, screen));
  }

  /** An order's document. */
  static Shown shown(Standing standing, boolean internal) {
    Order order = standing.order();
    return new Shown(
        order.number(),
        order.sold(),
        order.state(),
        order.timing(),
        order.cancellation(),
        new Goods(
            order.lines().stream()
                .map(line -> new Line(line, line.shortage(), standing.unsupplied(line.position())))
                .toList(),
            order.purchases().stream().map(bought -> Purchase.of(bought, internal)).toList(),
            standing.groups()));
  }
}
