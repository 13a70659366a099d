package hosewright.command;

import hosewright.quote.Quote;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import org.springframework.beans.factory.ObjectProvider;

/** Shows one quote as it was made. */
final class QuoteShowCommand extends ShellCommand {
  private final ObjectProvider<Books> books;

  QuoteShowCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "quote show", Group.QUOTE, "Shows a quote as it was made", "quote show Q-000001")
            .with(QuoteChoice.argument(books))
            .with(QuoteChoice.revision()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.getObject()) {
      Quote quote = QuoteChoice.of(in, open);
      return Answer.of(quote, screen -> QuoteText.of(quote, screen));
    }
  }
}
