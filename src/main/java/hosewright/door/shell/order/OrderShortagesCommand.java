package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ListShortages;
import hosewright.desk.order.ListShortages.Shortage;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;

/** Lists what orders wait for: how much, from whom, since when overdue. */
public final class OrderShortagesCommand extends ShellCommand {
  private final ListShortages listShortages;

  public OrderShortagesCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
            "order shortages",
            Group.BUY,
            "Lists what orders are short of, and when it should come",
            "order shortages"));
    this.listShortages = new ListShortages(books);
  }

  record Shortages(List<Shortage> shortages) {}

  private static String from(Shortage one) {
    String nobody =
        one.awaited().unsupplied() > 0 ? one.awaited().unsupplied() + " from nobody" : "";
    return one.awaited()
        .purchase()
        .map(purchase -> nobody.isEmpty() ? purchase : purchase + ", " + nobody)
        .orElse("nobody");
  }

  @Override
  protected Answer answer(Invocation in) {
    List<Shortage> all = listShortages.list();
    return Answer.of(
        new Shortages(all),
        screen -> {
          if (all.isEmpty()) {
            return "No order is short of anything.";
          }
          Table table =
              Table.of("order", "#", "item", "description", "short", "from", "expected")
                  .numbers(1, 4);
          all.forEach(
              one ->
                  table.row(
                      one.order(),
                      one.line(),
                      one.item(),
                      one.description(),
                      one.shortage(),
                      from(one),
                      one.awaited().expectedOn().map(LocalDate::toString).orElse("-")
                          + (one.awaited().overdue() ? " overdue" : "")));
          return table.on(screen);
        });
  }
}
