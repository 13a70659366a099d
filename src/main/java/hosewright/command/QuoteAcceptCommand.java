package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.quote.AcceptQuote;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Notes that a buyer took a quote; an order can then be raised from it. */
final class QuoteAcceptCommand extends ShellCommand {
  private final AcceptQuote acceptQuote;

  QuoteAcceptCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote accept",
                Group.QUOTE,
                "Notes that the buyer took an issued quote",
                "quote accept Q-000001 --note \"their order 4711\"")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("note", "TEXT", "for example the number of their order"),
                SignedBy.option()));
    this.acceptQuote = new AcceptQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return MovedText.answer(
        acceptQuote.accept(in.argument(0).orElseThrow(), in.value("note"), SignedBy.name(in)));
  }
}
