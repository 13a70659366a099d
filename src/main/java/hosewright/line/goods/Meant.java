package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an item number, or a word of the trade, means.
 *
 * @param item the item, where its number was named
 * @param ranks the sorts meant, those before any other that are sold; none where a number was named
 * @param plain whether only the kind was named, so that a thing of unknown sort may be meant too
 */
record Meant(
    String what, Optional<Item> item, ItemKind kind, List<List<Sort>> ranks, boolean plain) {

  /**
   * What a word means.
   *
   * @throws BadInputException when it is neither an item number nor a word for anything
   */
  static Meant of(String what, Catalogue catalogue) {
    Optional<Item> item = catalogue.item(what);
    if (item.isPresent()) {
      return new Meant(what, item, item.get().kind(), List.of(), false);
    }
    String said = what.toLowerCase(Locale.ROOT).replace('-', ' ').strip();
    for (Sort sort : Sort.values()) {
      if (sort.kind().isPresent()) {
        ItemKind kind = sort.kind().get();
        boolean named =
            said.equals(sort.spoken()) || said.equals(sort.spoken() + " " + kind.word());
        if (named && !said.equals(kind.word())) {
          return new Meant(what, item, kind, List.of(List.of(sort)), false);
        }
      }
    }
    return plainly(what, said).orElseThrow(() -> unknown(what, catalogue));
  }

  /** Things of a sort, whatever words were used. */
  static Meant of(Sort sort) {
    return new Meant(
        sort.spoken(), Optional.empty(), sort.kind().orElseThrow(), List.of(List.of(sort)), false);
  }

  private static Optional<Meant> plainly(String what, String said) {
    TreeMap<Integer, List<Sort>> ranks =
        Standing.all().stream()
            .filter(standing -> standing.word().equals(said))
            .collect(
                Collectors.groupingBy(
                    standing -> standing.rank().orElse(1),
                    TreeMap::new,
                    Collectors.mapping(Standing::sort, Collectors.toList())));
    if (ranks.isEmpty()) {
      return Optional.empty();
    }
    ItemKind kind = ranks.firstEntry().getValue().get(0).kind().orElseThrow();
    return Optional.of(
        new Meant(
            what, Optional.empty(), kind, List.copyOf(ranks.values()), said.equals(kind.word())));
  }

  /** The sorts meant, of whatever rank. */
  List<Sort> sorts() {
    return item.isPresent()
        ? List.of(item.get().sort())
        : ranks.stream().flatMap(List::stream).toList();
  }

  /** Where it stands: nowhere of its own where its sort is not known. */
  Place place() {
    return sorts().stream()
        .flatMap(sort -> Standing.of(sort).stream())
        .map(Standing::place)
        .findFirst()
        .orElse(Place.BESIDE);
  }

  private static BadInputException unknown(String what, Catalogue catalogue) {
    List<String> kinds =
        Arrays.stream(ItemKind.values()).filter(ItemKind::isAccessory).map(ItemKind::word).toList();
    List<String> words = new ArrayList<>(kinds);
    Standing.all().forEach(standing -> words.add(standing.sort().spoken()));
    return new BadInputException(
        List.of(
            new Problem(
                "accessories",
                what,
                "an item number of the catalogue, or one of "
                    + String.join(", ", kinds)
                    + ", or more closely what it is, such as gate valve, tip or hydrant wrench",
                Nearest.to(
                    what,
                    Stream.concat(words.stream(), catalogue.items().stream().map(Item::number))
                        .toList()))));
  }
}
