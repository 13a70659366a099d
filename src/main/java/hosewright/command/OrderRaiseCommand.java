package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Books;
import hosewright.order.Order;
import hosewright.order.OrderBook.Actor;
import hosewright.order.Raising;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Raises an order from an accepted quote: reserves what is free and buys the rest. */
final class OrderRaiseCommand extends ShellCommand {
  private final Supplier<Books> books;

  OrderRaiseCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "order raise",
                Group.BUY,
                "Raises an order from an accepted quote: reserves stock and buys the rest",
                "order raise Q-000001")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.flag("no-top-up", "do not buy more to reach a supplier's minimum order"),
                SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote quote = QuoteChoice.latest(in, open);
      QuoteLife.take(quote, Step.ORDER);
      Actor actor = OrderChoice.actor(in, open);
      Catalogue catalogue = open.itemsOf(quote);
      Raising raising =
          new Raising(
              catalogue,
              open.orders().answers(quote.number()),
              open.today(),
              !in.flag("no-top-up"));
      Order order =
          open.orders()
              .raise(
                  quote,
                  (number, free) -> raising.raise(number, quote, free, actor.at(), actor.name()),
                  actor);
      return OrderShowCommand.answer(order, false);
    }
  }
}
