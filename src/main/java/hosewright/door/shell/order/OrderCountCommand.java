package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.CountShelf;
import hosewright.desk.order.OfferShelves;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.order.OrderBook.Change;
import hosewright.order.OrderBook.Counted;
import hosewright.problem.BadInputException;
import java.util.List;
import java.util.function.Supplier;

/** Puts on record how many pieces of an item somebody counted on the shelf. */
public final class OrderCountCommand extends ShellCommand {
  private final CountShelf countShelf;

  public OrderCountCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order count",
                Group.BUY,
                "Puts on record how many pieces of an item lie on the shelf",
                "order count H175-DJ-50-15NH 12 --reason \"counted at year's end\"")
            .with(
                ArgumentSpec.required("ITEM", "the item that was counted")
                    .completing(() -> new OfferShelves(books).codes()),
                ArgumentSpec.required("PIECES", "how many lie there"))
            .with(
                OptionSpec.value("reason", "TEXT", "why it was counted, for the record")
                    .asRequired(),
                SignedBy.option()));
    this.countShelf = new CountShelf(books);
  }

  /**
   * A shelf as it was counted.
   *
   * @param shortened promises there are no longer pieces for, the oldest first
   * @param served promises that pieces were found for, the oldest first
   */
  record Shelf(String item, int before, int after, List<Change> shortened, List<Change> served) {}

  @Override
  protected Answer answer(Invocation in) {
    Counted counted =
        countShelf.count(
            new CountShelf.Request(
                in.argument(0).orElseThrow(),
                pieces(in.argument(1).orElseThrow()),
                in.required("reason"),
                SignedBy.name(in)));
    return Answer.of(
        new Shelf(
            counted.stockCode(),
            counted.before(),
            counted.after(),
            counted.shortened(),
            counted.served()),
        screen -> text(counted, screen));
  }

  private static int pieces(String typed) {
    if (!typed.strip().matches("\\d{1,6}")) {
      throw new BadInputException("pieces", typed, "a whole number from 0 to 999999");
    }
    return Integer.parseInt(typed.strip());
  }

  private static String text(Counted counted, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(
        "%s: %d on the shelf, %d before."
            .formatted(counted.stockCode(), counted.after(), counted.before()));
    ServedText.shortened(prose, counted.shortened());
    ServedText.served(prose, counted.served());
    return prose.toString();
  }
}
