package hosewright.desk.catalogue;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.find.ItemSearch;
import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Finds items by what people remember of them. */
public final class FindItems {
  /** How many somebody may ask for. */
  public static final int MOST = 1_000;

  private static final List<String> KINDS =
      Arrays.stream(ItemKind.values()).map(ItemKind::word).toList();

  private final Supplier<Books> books;

  public FindItems(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What was found.
   *
   * @param understood the parts of the question, as they were read
   * @param whole false when no item has every part, and these have most of them
   * @param count how many there are, shown or not
   */
  public record FoundItems(
      List<String> understood, boolean whole, int count, List<FoundItem> items) {}

  /** An item with its list price of today. */
  public record FoundItem(
      String item,
      String kind,
      String description,
      List<End> ends,
      @JsonUnwrapped Price price,
      int onHand,
      boolean discontinued) {

    /** What one costs. */
    public record Price(Optional<Money> unitPrice, String unit) {}
  }

  /**
   * The items that fit best.
   *
   * @param words words, sizes and ends to look for
   * @param kind only items of this kind; empty for every kind
   * @param most how many to tell of, 1 to {@link #MOST}
   * @throws BadInputException naming everything that cannot be used
   */
  public FoundItems find(String words, Optional<String> kind, String most) {
    Refusals refusals = new Refusals();
    Optional<Optional<ItemKind>> only = refusals.read(() -> kind.map(FindItems::kind));
    Optional<Integer> count = refusals.read(() -> most(most));
    refusals.throwAny();
    try (Books open = books.get()) {
      ItemSearch.Found found =
          new ItemSearch(open.shelf().listings()).find(words, only.orElseThrow());
      List<String> numbers =
          found.numbers().subList(0, Math.min(count.orElseThrow(), found.numbers().size()));
      Catalogue shown = open.shelf().load(numbers);
      return new FoundItems(
          found.understood(),
          found.whole(),
          found.numbers().size(),
          numbers.stream().map(number -> item(shown, number, open.today())).toList());
    }
  }

  private static ItemKind kind(String typed) {
    String word = typed.toLowerCase(Locale.ROOT);
    return Arrays.stream(ItemKind.values())
        .filter(kind -> kind.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    List.of(
                        new Problem(
                            "kind",
                            typed,
                            "one of " + String.join(", ", KINDS),
                            Nearest.to(typed, KINDS)))));
  }

  private static int most(String typed) {
    if (!typed.matches("[1-9][0-9]{0,3}") || Integer.parseInt(typed) > MOST) {
      throw new BadInputException("most", typed, "a whole number from 1 to " + MOST);
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
        new FoundItem.Price(shown.listPrice(number, 1, today), item.unit().word()),
        item.stocking().onHand(),
        item.discontinued());
  }
}
