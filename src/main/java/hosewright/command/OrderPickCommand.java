package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.order.BenchCard;
import hosewright.order.Order;
import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import hosewright.report.Slip;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.util.List;
import java.util.function.Supplier;

/** Prints what the store room picks for an order and what the bench makes of it. */
final class OrderPickCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderPickCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order pick",
                Group.BUY,
                "Prints an order's pick list, the bench's card and the labels",
                "order pick O-000001 --as pdf --overwrite")
            .with(OrderChoice.argument(books))
            .with(SlipFiles.options()));
    this.books = books;
  }

  record Picked(String number, Slip slip, BenchCard bench, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Order order;
    BenchCard card;
    Slip slip;
    String dealer;
    try (Books open = books.get()) {
      order = OrderChoice.order(in, open);
      if (order.cancellation().isPresent()) {
        throw new BadInputException("number", order.number(), "an order that is not cancelled");
      }
      Quote quote = open.quotes().find(order.quoteNumber(), order.quoteRevision()).orElseThrow();
      card = BenchCard.of(order, quote, open.itemsOf(quote));
      slip = PickSlip.of(order, quote, card);
      dealer = Papers.dealer(open.terms()).name();
    }
    List<String> files = SlipFiles.write(in, slip, order.number() + "-pick", dealer);
    return Answer.of(
        new Picked(order.number(), slip, card, files),
        screen ->
            SlipFiles.text(slip, screen)
                + (files.isEmpty() ? "" : "\n\n" + PaperOptions.said(files)));
  }
}
