package hosewright.desk.words;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.find.ItemSearch;
import hosewright.catalogue.find.Listing;
import hosewright.desk.Books;
import hosewright.desk.interview.Asker;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Finds the item that somebody means by its number or by words. Where words could mean several, the
 * person is asked who is there to answer; else nothing is guessed.
 */
public final class ItemWords {
  /** As many as can be told apart at a glance. */
  private static final int MOST_SHOWN = 6;

  private final Catalogue catalogue;
  private final Supplier<List<Listing>> listings;
  private final Optional<Asker> asker;
  private ItemSearch search;

  ItemWords(Catalogue catalogue, Supplier<List<Listing>> listings, Optional<Asker> asker) {
    this.catalogue = catalogue;
    this.listings = listings;
    this.asker = asker;
  }

  /**
   * Of the catalogue in these books.
   *
   * @param asker who can be asked; empty in a script
   */
  public static ItemWords in(Books open, Optional<Asker> asker) {
    return new ItemWords(open.catalogue(), open.shelf()::listings, asker);
  }

  /** Of these books, to be used when they are closed again; nobody is asked. */
  public static ItemWords kept(Books open) {
    List<Listing> all = open.shelf().listings();
    return new ItemWords(open.catalogue(), () -> all, Optional.empty());
  }

  /** The catalogue it looks in. */
  Catalogue catalogue() {
    return catalogue;
  }

  /** The item of this number, in any case of letters. */
  Optional<Item> numbered(String what) {
    return catalogue
        .item(what)
        .or(
            () ->
                catalogue.items().stream()
                    .filter(item -> item.number().equalsIgnoreCase(what))
                    .findFirst());
  }

  /**
   * The one item that has every part of these words; empty where none has. Several threads may ask.
   *
   * @throws BadInputException naming the items, where the words could mean several
   */
  synchronized Optional<Item> described(String field, String words) {
    if (search == null) {
      search = new ItemSearch(listings.get());
    }
    ItemSearch.Found found = search.find(words, Optional.empty());
    // A part is never bought on a guess.
    if (!found.whole() || found.guessed() || found.understood().isEmpty()) {
      return Optional.empty();
    }
    List<Item> meant =
        found.numbers().stream().flatMap(number -> catalogue.item(number).stream()).toList();
    return meant.size() < 2 ? meant.stream().findFirst() : Optional.of(chosen(field, words, meant));
  }

  private Item chosen(String field, String words, List<Item> meant) {
    if (asker.isEmpty()) {
      throw new BadInputException(
          List.of(
              new Problem(
                  field,
                  words,
                  "words that fit one item; these fit "
                      + meant.size()
                      + ": "
                      + meant.stream()
                          .limit(MOST_SHOWN)
                          .map(item -> item.number() + " (" + item.description() + ")")
                          .collect(Collectors.joining("; "))
                      + (meant.size() > MOST_SHOWN ? " ..." : ""),
                  meant.get(0).number())));
    }
    Asker person = asker.get();
    person.say("'" + words + "' could mean:");
    List<Item> shown = meant.subList(0, Math.min(MOST_SHOWN, meant.size()));
    for (int i = 0; i < shown.size(); i++) {
      person.say(
          "  "
              + (char) ('a' + i)
              + ") "
              + shown.get(i).number()
              + "  "
              + shown.get(i).description());
    }
    while (true) {
      String answer =
          person
              .answer("which: ", shown.stream().map(Item::number).toList())
              .orElseThrow(
                  () -> new BadInputException(field, words, "a choice among the items named"));
      Optional<Item> picked = picked(answer, shown);
      if (picked.isPresent()) {
        return picked.get();
      }
      person.say(
          "  A letter from a to " + (char) ('a' + shown.size() - 1) + ", or an item number.");
    }
  }

  private Optional<Item> picked(String answer, List<Item> shown) {
    String typed = answer.strip();
    int letter = typed.length() == 1 ? Character.toLowerCase(typed.charAt(0)) - 'a' : -1;
    return letter >= 0 && letter < shown.size() ? Optional.of(shown.get(letter)) : numbered(typed);
  }
}
