package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.ItemSearch;
import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Finds items by what people remember of them. */
final class CatalogueFindCommand extends ShellCommand {
  private static final List<String> KINDS =
      Arrays.stream(ItemKind.values()).map(ItemKind::word).toList();
  private static final int SHOWN = 20;
  private static final int MOST = 1_000;

  private final Supplier<Books> books;

  CatalogueFindCommand(Supplier<Books> books) {
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
                OptionSpec.value("most", "N", "how many to show, 1 to " + MOST)
                    .withDefault(String.valueOf(SHOWN))));
    this.books = books;
  }

  /**
   * What was found.
   *
   * @param understood the parts of the question, as they were read
   * @param whole false when no item has every part, and these have most of them
   * @param count how many there are, shown or not
   */
  record FoundItems(List<String> understood, boolean whole, int count, List<FoundItem> items) {}

  record FoundItem(
      String item,
      String kind,
      String description,
      List<End> ends,
      Optional<Money> unitPrice,
      String unit,
      int onHand,
      boolean discontinued) {}

  @Override
  protected Answer answer(Invocation in) {
    Refusals refusals = new Refusals();
    Optional<Optional<ItemKind>> kind = refusals.read(() -> in.value("kind").map(this::kind));
    Optional<Integer> most = refusals.read(() -> most(in.required("most")));
    refusals.throwAny();
    try (Books open = books.get()) {
      ItemSearch search = new ItemSearch(open.shelf().listings());
      ItemSearch.Found found =
          search.find(String.join(" ", in.arguments()), kind.orElse(Optional.empty()));
      List<String> numbers =
          found.numbers().subList(0, Math.min(most.orElse(SHOWN), found.numbers().size()));
      Catalogue shown = open.shelf().load(numbers);
      FoundItems document =
          new FoundItems(
              found.understood(),
              found.whole(),
              found.numbers().size(),
              numbers.stream().map(number -> item(shown, number, open.today())).toList());
      return Answer.of(document, screen -> text(document, screen));
    }
  }

  private ItemKind kind(String typed) {
    String word = typed.toLowerCase(Locale.ROOT);
    return Arrays.stream(ItemKind.values())
        .filter(kind -> kind.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            "--kind",
                            typed,
                            "one of " + String.join(", ", KINDS),
                            Nearest.to(typed, KINDS)))));
  }

  private static int most(String typed) {
    if (!typed.matches("[1-9][0-9]{0,3}") || Integer.parseInt(typed) > MOST) {
      throw new BadInputException("--most", typed, "a whole number from 1 to " + MOST);
    }
    return Integer.parseInt(typed);
  }

  private static FoundItem item(Catalogue shown, String number, LocalDate today) {
    Item item = shown.item(number).orElseThrow();
    return new FoundItem(
        number,
        item.kind().word(),
        item.description(),
        item.ends(),
        shown.listPrice(number, 1, today),
        item.unit().word(),
        item.stocking().onHand(),
        item.discontinued());
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
          item.unitPrice().map(MoneyWords::of).orElse("no price"),
          item.unit(),
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
