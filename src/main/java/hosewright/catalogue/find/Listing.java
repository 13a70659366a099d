package hosewright.catalogue.find;

import hosewright.catalogue.ItemKind;
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
    Shelf shelf) {

  /** Whether and how many of it could be had; of things alike the ones at hand come first. */
  public record Shelf(boolean discontinued, int onHand) {}

  /** Texts about an item as one; null stands for none. */
  public static String words(String... texts) {
    return String.join(
        " ", Stream.of(texts).filter(text -> text != null && !text.isEmpty()).toList());
  }
}
