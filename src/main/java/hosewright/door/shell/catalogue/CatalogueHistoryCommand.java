package hosewright.door.shell.catalogue;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.catalogue.TracePrices;
import hosewright.desk.catalogue.TracePrices.History;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.store.catalogue.CatalogueStore.Load;
import hosewright.store.catalogue.CatalogueStore.LoadedPrice;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.function.Supplier;

/** Shows every list price an item ever had, and which load brought it. */
public final class CatalogueHistoryCommand extends ShellCommand {
  private final TracePrices trace;

  public CatalogueHistoryCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "catalogue history",
                Group.BUY,
                "Shows an item's prices with their days in force and the load that brought each",
                "catalogue history H175-DJ-50-15NH")
            .with(CatalogueChoice.item(books)));
    trace = new TracePrices(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    History history = trace.trace(in.argument(0).orElseThrow());
    return Answer.of(history, screen -> text(history, screen));
  }

  private static String text(History history, Screen screen) {
    Prose prose = new Prose(screen);
    prose.line(history.item() + (history.listed() ? "" : ", no longer listed"));
    if (history.prices().isEmpty()) {
      return prose.line("It never had a list price.").toString();
    }
    Table table =
        Table.of("in force from", "until", "from quantity", "price", "brought by", "replaced by")
            .numbers(2, 3);
    for (LoadedPrice row : history.prices()) {
      table.row(
          row.price().from(),
          row.price().until().map(LocalDate::toString).orElse("open"),
          row.price().minimumQuantity(),
          MoneyWords.of(row.price().unitPrice()),
          said(row.broughtBy()),
          row.replacedBy().map(CatalogueHistoryCommand::said).orElse("in use"));
    }
    return prose.block(table.on(screen)).toString();
  }

  private static String said(Load load) {
    String day =
        "load %d, %s"
            .formatted(load.number(), load.loadedAt().atZone(ZoneOffset.UTC).toLocalDate());
    return load.source().isEmpty() ? day : day + ", " + load.source();
  }
}
