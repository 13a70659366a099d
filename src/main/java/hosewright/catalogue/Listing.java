package hosewright.catalogue;

import hosewright.thread.End;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is looked at when somebody searches the catalogue.
 *
 * @param words everything else that is written about the item: description, material, series,
 *     standard
 */
public record Listing(
    String number,
    ItemKind kind,
    String words,
    List<End> ends,
    OptionalDouble hoseSizeIn,
    OptionalDouble lengthFt,
    boolean discontinued,
    int onHand) {

  public static Listing of(Item item) {
    return new Listing(
        item.number(),
        item.kind(),
        words(
            item.description(),
            item.material(),
            item.hose().map(HoseFacts::series).orElse(""),
            item.markedTo()),
        item.ends(),
        item.hose().map(facts -> OptionalDouble.of(facts.sizeIn())).orElse(OptionalDouble.empty()),
        item.hose().map(HoseFacts::lengthFt).orElse(OptionalDouble.empty()),
        item.discontinued(),
        item.stocking().onHand());
  }

  /** Texts about an item as one; null stands for none. */
  public static String words(String... texts) {
    return String.join(
        " ", Stream.of(texts).filter(text -> text != null && !text.isEmpty()).toList());
  }
}
