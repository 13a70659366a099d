package hosewright.line.assembly;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Rating;
import hosewright.job.question.OwnedHose;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One way to get a section of a hose line: bought coupled, made up from parts, or there already.
 *
 * @param item the coupled hose, or the bulk hose it is cut from; empty for what the buyer owns
 * @param lengthFt coupled length, ft
 * @param description what a buyer reads
 * @param bill items and quantities one section takes; empty for what the buyer owns
 * @param weightLb empty weight of one section, lb
 * @param rating the least of hose, couplings and attachments
 * @param owned what the buyer owns of these
 */
public record SectionOption(
    Optional<Item> item,
    double lengthFt,
    String description,
    Map<Item, Integer> bill,
    double weightLb,
    Rating rating,
    Optional<OwnedHose> owned) {

  public static SectionOption bought(
      Item item,
      double lengthFt,
      String description,
      Map<Item, Integer> bill,
      double weightLb,
      Rating rating) {
    return new SectionOption(
        Optional.of(item), lengthFt, description, bill, weightLb, rating, Optional.empty());
  }

  /** This section, held to other ratings as well. */
  public SectionOption ratedLike(List<Rating> others) {
    List<Rating> all = Stream.concat(Stream.of(rating), others.stream()).toList();
    return new SectionOption(
        item, lengthFt, description, bill, weightLb, LeastRating.of(all), owned);
  }

  public boolean isOwned() {
    return owned.isPresent();
  }

  /** Whether it is made up on the bench. */
  public boolean isMadeUp() {
    return item.filter(hose -> hose.kind() == ItemKind.BULK_HOSE).isPresent();
  }

  /** Hose cut for one, ft, trimming included; empty where it is not made up on the bench. */
  public Optional<Integer> cutFt() {
    return item.filter(hose -> isMadeUp()).map(bill::get);
  }

  /** How many there are to be laid. */
  int most() {
    return owned.map(OwnedHose::count).orElse(Integer.MAX_VALUE);
  }
}
