package hosewright.line;

import hosewright.catalogue.Item;
import java.util.Map;
import java.util.Optional;

/**
 * One way to get a section of a hose line: bought coupled, made up from parts, or there already.
 *
 * @param item the coupled hose, or the bulk hose it is cut from; empty for what the buyer owns
 * @param lengthFt coupled length, ft
 * @param description what a buyer reads
 * @param bill items and quantities one section takes; empty for what the buyer owns
 * @param weightLb empty weight of one section, lb
 * @param owned what the buyer owns of these
 */
record SectionOption(
    Optional<Item> item,
    double lengthFt,
    String description,
    Map<Item, Integer> bill,
    double weightLb,
    Optional<OwnedHose> owned) {

  static SectionOption bought(
      Item item, double lengthFt, String description, Map<Item, Integer> bill, double weightLb) {
    return new SectionOption(
        Optional.of(item), lengthFt, description, bill, weightLb, Optional.empty());
  }

  boolean isOwned() {
    return owned.isPresent();
  }

  /** How many there are to be laid. */
  int most() {
    return owned.map(OwnedHose::count).orElse(Integer.MAX_VALUE);
  }
}
