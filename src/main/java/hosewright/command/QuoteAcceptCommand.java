package hosewright.command;

import hosewright.desk.Books;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Notes that a buyer took a quote; an order can then be raised from it. */
final class QuoteAcceptCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteAcceptCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote accept",
                Group.QUOTE,
                "Notes that the buyer took an issued quote",
                "quote accept Q-000001 --note \"their order 4711\"")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("note", "TEXT", "for example the number of their order"),
                SignedBy.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    return Stepped.take(Step.ACCEPT, "note", in, books);
  }
}
