package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.DiscardQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Gives a draft up: what was offered before it stands again. */
public final class QuoteDiscardCommand extends ShellCommand {
  private final DiscardQuote discardQuote;

  public QuoteDiscardCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote discard",
                Group.QUOTE,
                "Gives a draft up; what was offered before it stands again",
                "quote discard Q-000001 --reason \"they want the first one after all\"")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why, for the record").asRequired(),
                SignedBy.option()));
    this.discardQuote = new DiscardQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    return MovedText.answer(
        discardQuote.discard(
            in.argument(0).orElseThrow(), in.required("reason"), SignedBy.name(in)));
  }
}
