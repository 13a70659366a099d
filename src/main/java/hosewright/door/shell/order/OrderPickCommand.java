package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.PickOrder;
import hosewright.desk.order.PickOrder.Picking;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.order.BenchCard;
import hosewright.paper.order.Slip;
import java.util.List;
import java.util.function.Supplier;

/** Prints what the store room picks for an order and what the bench makes of it. */
public final class OrderPickCommand extends ShellCommand {
  private final PickOrder pickOrder;

  public OrderPickCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order pick",
                Group.BUY,
                "Prints an order's pick list, the bench's card and the labels",
                "order pick O-000001 --as pdf --overwrite")
            .with(OrderArgument.order(books))
            .with(OrderArgument.group())
            .with(SlipFiles.options()));
    this.pickOrder = new PickOrder(books);
  }

  record Picked(String number, Slip slip, BenchCard bench, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Picking picking = pickOrder.pick(in.argument(0).orElseThrow(), OrderArgument.group(in));
    String number = picking.order().number();
    Slip slip = PickSlip.of(picking);
    List<String> files =
        SlipFiles.write(
            in,
            slip,
            number + "-pick" + OrderArgument.group(in).map(group -> "-" + group).orElse(""),
            picking.dealer());
    return Answer.of(
        new Picked(number, slip, picking.card(), files),
        screen ->
            SlipFiles.text(slip, screen)
                + (files.isEmpty() ? "" : "\n\n" + PaperOptions.said(files)));
  }
}
