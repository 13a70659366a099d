package hosewright.door.shell.order;

import hosewright.desk.Books;
import hosewright.desk.order.ShowPurchase;
import hosewright.desk.order.ShowPurchase.Purchase;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.OrderArgument;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.order.PurchaseOrder;
import hosewright.paper.order.Slip;
import hosewright.quote.terms.Dealer;
import java.util.List;
import java.util.function.Supplier;

/** Prints a purchase order for its supplier. */
public final class OrderPurchaseCommand extends ShellCommand {
  private final ShowPurchase showPurchase;

  public OrderPurchaseCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order purchase",
                Group.BUY,
                "Prints a purchase order for its supplier",
                "order purchase P-000001 --as pdf,workbook --overwrite")
            .with(OrderArgument.purchase(books))
            .with(OptionSpec.flag("without-prices", "without what is paid, for the dock"))
            .with(SlipFiles.options()));
    this.showPurchase = new ShowPurchase(books);
  }

  record Purchased(String number, String supplier, Slip slip, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Purchase found = showPurchase.show(in.argument(0).orElseThrow());
    PurchaseOrder purchase = found.order();
    Dealer dealer = found.dealer();
    Slip slip = PurchaseSlip.of(found, !in.flag("without-prices"));
    List<String> files = SlipFiles.write(in, slip, purchase.number(), dealer.name());
    return Answer.of(
        new Purchased(purchase.number(), purchase.supplier(), slip, files),
        screen ->
            SlipFiles.text(slip, screen)
                + (files.isEmpty() ? "" : "\n\n" + PaperOptions.said(files)));
  }
}
