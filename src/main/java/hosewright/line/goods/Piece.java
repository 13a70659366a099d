package hosewright.line.goods;

import hosewright.catalogue.Item;
import java.util.Optional;

/**
 * Some of one thing that is bought besides the line.
 *
 * @param asked the word or number it was asked for by
 * @param item empty where the catalogue has none that fits
 * @param lacking what is to be sourced then, in words
 * @param care what a buyer must know of it
 */
public record Piece(
    String asked,
    Optional<Item> item,
    String lacking,
    int count,
    Place place,
    Optional<String> care) {

  /** A wrench asked for where every coupling closes by hand. */
  static Piece needless(String asked) {
    return new Piece(asked, Optional.empty(), asked, 0, Place.COUPLINGS, Optional.empty());
  }

  /** As many, and else the same. */
  Piece counting(int many) {
    return new Piece(asked, item, lacking, many, place, care);
  }
}
