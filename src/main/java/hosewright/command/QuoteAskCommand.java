package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.quote.AskSuppliers;
import hosewright.desk.quote.AskSuppliers.AskedFor;
import hosewright.desk.quote.OfferSuppliers;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.function.Supplier;

/** Writes sheets that ask suppliers for the price of what a quote has none for. */
final class QuoteAskCommand extends ShellCommand {
  private final AskSuppliers askSuppliers;

  QuoteAskCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote ask",
                Group.QUOTE,
                "Writes sheets that ask suppliers for prices a quote has none for",
                "quote ask Q-000003 --supplier COUPL --supplier BRASS")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("supplier", "CODE", "whom to ask; one sheet each")
                    .asRequired()
                    .asRepeatable()
                    .completing(() -> new OfferSuppliers(books).codes()))
            .with(PaperOptions.options()));
    this.askSuppliers = new AskSuppliers(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    AskedFor done =
        askSuppliers.ask(
            new AskSuppliers.Request(
                in.argument(0).orElseThrow(),
                in.values("supplier"),
                PaperOptions.paper(in),
                PaperOptions.folder(in),
                in.flag("overwrite")));
    return Answer.of(done, PaperOptions.said(done.files()));
  }
}
