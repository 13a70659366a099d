package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.supplier.AskSuppliers;
import hosewright.desk.supplier.AskSuppliers.AskedFor;
import hosewright.desk.supplier.OfferSuppliers;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Writes sheets that ask suppliers for the price of what a quote has none for. */
public final class QuoteAskCommand extends ShellCommand {
  private final AskSuppliers askSuppliers;

  public QuoteAskCommand(Supplier<Books> books) {
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
