package hosewright.door.shell.catalogue;

import hosewright.desk.Books;
import hosewright.desk.catalogue.ShowItem;
import hosewright.desk.catalogue.ShownItem;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Shows everything the books know about one item. */
public final class CatalogueShowCommand extends ShellCommand {
  private final ShowItem show;

  public CatalogueShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "catalogue show",
                Group.BUY,
                "Shows an item: facts, ends, stock, price today, and where it is used",
                "catalogue show H175-DJ-50-15NH")
            .alias("item")
            .with(CatalogueChoice.item(books))
            .with(internal()));
    show = new ShowItem(books);
  }

  public static OptionSpec internal() {
    return OptionSpec.flag("internal", "show cost and margin too, for the dealer's own eyes");
  }

  @Override
  protected Answer answer(Invocation in) {
    ShownItem shown = show.show(in.argument(0).orElseThrow(), in.flag("internal"));
    return Answer.of(shown, screen -> CatalogueShowText.of(shown, screen));
  }
}
