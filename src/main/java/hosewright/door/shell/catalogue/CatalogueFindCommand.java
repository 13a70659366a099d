package hosewright.door.shell.catalogue;

import hosewright.catalogue.ItemKind;
import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.catalogue.FindItems;
import hosewright.desk.catalogue.FindItems.FoundItem;
import hosewright.desk.catalogue.FindItems.FoundItems;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Finds items by what people remember of them. */
public final class CatalogueFindCommand extends ShellCommand {
  private static final List<String> KINDS =
      Arrays.stream(ItemKind.values()).map(ItemKind::word).toList();
  private static final int SHOWN = 20;

  private final FindItems find;

  public CatalogueFindCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "catalogue find",
                Group.BUY,
                "Finds items by words, sizes, ends or part of their number, however spelt",
                "catalogue find 2.5 nh female swivel 1.5 nh male")
            .alias("find")
            .with(
                ArgumentSpec.required("WORDS", "words, sizes and ends to look for").asRepeatable())
            .with(
                OptionSpec.value("kind", "KIND", "only items of this kind").completing(() -> KINDS),
                OptionSpec.value("most", "N", "how many to show, 1 to " + FindItems.MOST)
                    .withDefault(String.valueOf(SHOWN))));
    find = new FindItems(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    FoundItems found =
        find.find(String.join(" ", in.arguments()), in.value("kind"), in.required("most"));
    return Answer.of(found, screen -> text(found, screen));
  }

  private static String text(FoundItems found, Screen screen) {
    Prose prose = new Prose(screen);
    String read = String.join(" + ", found.understood());
    if (found.count() == 0) {
      return prose
          .line("Nothing is like " + read + ".")
          .line("Try fewer words, another size, or 'catalogue find' with the kind alone.")
          .toString();
    }
    prose.line(
        found.whole()
            ? count(found.count()) + " for " + read + "."
            : "No item has all of "
                + read
                + "; "
                + count(found.count())
                + (found.count() == 1 ? " has" : " have")
                + " most of it.");
    Table table = Table.of("item", "description", "price", "unit", "on hand").numbers(2, 4);
    for (FoundItem item : found.items()) {
      table.row(
          item.item(),
          item.description() + (item.discontinued() ? " (discontinued)" : ""),
          item.price().unitPrice().map(MoneyWords::of).orElse("no price"),
          item.price().unit(),
          item.onHand());
    }
    prose.block(table.on(screen));
    if (found.items().size() < found.count()) {
      prose.line(
          "The best %d of %s; more words narrow it, --most N shows more."
              .formatted(found.items().size(), count(found.count())));
    }
    return prose.toString();
  }

  private static String count(int number) {
    return String.format(Locale.ROOT, number == 1 ? "%,d item" : "%,d items", number);
  }
}
