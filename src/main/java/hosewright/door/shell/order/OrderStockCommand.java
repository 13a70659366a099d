package hosewright.door.shell.order;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.Stock;
import hosewright.desk.order.OfferShelves;
import hosewright.desk.order.ShowStock;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import hosewright.order.OrderBook.StockLine;
import java.util.List;
import java.util.function.Supplier;

/** Shows what came, went, is on hand, promised and bought, and whether it balances. */
public final class OrderStockCommand extends ShellCommand {
  private final ShowStock showStock;

  public OrderStockCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order stock",
                Group.BUY,
                "Shows stock in, out, on hand, reserved and free, and whether it balances",
                "order stock H175-DJ-50-15NH")
            .alias("stock")
            .with(
                ArgumentSpec.optional("ITEM", "one item; left out, all that moved or is promised")
                    .completing(() -> new OfferShelves(books).codes())));
    this.showStock = new ShowStock(books);
  }

  /** A shelf with what is free of it. */
  record Shelf(
      String item,
      @JsonUnwrapped StockLine.Moved moved,
      int onHand,
      int reserved,
      int free,
      int onOrder) {}

  /**
   * The shelves.
   *
   * @param balanced whether for every shelf, shown or not, stock in is stock out and on hand, and
   *     what is reserved is held by lines of orders
   */
  record Stock(List<Shelf> shelves, boolean balanced) {}

  @Override
  protected Answer answer(Invocation in) {
    ShowStock.Stock found = showStock.show(in.argument(0));
    List<Shelf> shelves = found.shelves().stream().map(OrderStockCommand::shelf).toList();
    boolean balanced = found.balanced();
    return Answer.of(
        new Stock(shelves, balanced),
        screen -> {
          Table table =
              Table.of(
                      "item",
                      "counted",
                      "received",
                      "shipped",
                      "returned",
                      "sent back",
                      "on hand",
                      "reserved",
                      "free",
                      "on order")
                  .numbers(1, 2, 3, 4, 5, 6, 7, 8, 9);
          shelves.forEach(
              shelf ->
                  table.row(
                      shelf.item(),
                      shelf.moved().counted(),
                      shelf.moved().received(),
                      shelf.moved().shipped(),
                      shelf.moved().returned(),
                      shelf.moved().sentBack(),
                      shelf.onHand(),
                      shelf.reserved(),
                      shelf.free(),
                      shelf.onOrder()));
          String shown =
              shelves.isEmpty() ? "Nothing has moved and nothing is promised." : table.on(screen);
          return shown
              + (balanced
                  ? ("\nThe books balance: for each of %d items, stock in is stock out and on hand,"
                          + " and what is reserved is what orders hold.")
                      .formatted(found.counted())
                  : "\n"
                      + "The books do not balance: some stock on hand has no record, or some of"
                      + " what is reserved no order.");
        });
  }

  private static Shelf shelf(StockLine line) {
    return new Shelf(
        line.stockCode(),
        line.moved(),
        line.onHand(),
        line.reserved(),
        line.free(),
        line.onOrder());
  }
}
