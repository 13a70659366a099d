package hosewright.catalogue;

import hosewright.thread.End;
import java.util.List;
import java.util.Optional;

/**
 * How wide an item is inside, at its narrowest.
 *
 * @param boreIn clear bore, in
 * @param known false where the row does not say, and the size of the smallest end stands in for it
 */
public record Waterway(double boreIn, boolean known) {

  static Waterway known(double boreIn) {
    return new Waterway(boreIn, true);
  }

  /** By the smallest end; empty without ends. */
  static Optional<Waterway> guessed(List<End> ends) {
    return ends.stream()
        .map(End::sizeIn)
        .min(Double::compare)
        .map(sizeIn -> new Waterway(sizeIn, false));
  }
}
