package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.AcceptQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Notes that a buyer took a quote; an order can then be raised from it. */
public final class QuoteAcceptCommand extends ShellCommand {
  private final AcceptQuote acceptQuote;

  public QuoteAcceptCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote accept",
                Group.QUOTE,
                "Notes that the buyer took an issued quote",
                "quote accept Q-000001 --note \"their order 4711\"")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value(
                        "revision", "N", "the offer the buyer took, where a newer draft stands")
                    .withDefaultSaid("the latest"),
                OptionSpec.value("note", "TEXT", "for example the number of their order"),
                SignedBy.option()));
    this.acceptQuote = new AcceptQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return MovedText.answer(
        acceptQuote.accept(
            new AcceptQuote.Request(
                in.argument(0).orElseThrow(),
                in.value("revision"),
                in.value("note"),
                SignedBy.name(in))));
  }
}
