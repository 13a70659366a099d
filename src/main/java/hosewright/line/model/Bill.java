package hosewright.line.model;

import hosewright.catalogue.MoneyWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What is bought; it knows nothing of water.
 *
 * @param items what the catalogue sells
 * @param unpriced what still has to be sourced, or has no price
 * @param total goods subtotal; freight and tax are the quote's
 * @param date the day the prices are of
 * @param gaskets gaskets counted by how they come
 * @param spares spare sections bought, not laid
 * @param accessories what was asked for besides the line, and where each stands; none on a bill
 *     kept before they were written down
 */
public record Bill(
    List<Item> items,
    List<Unpriced> unpriced,
    Money total,
    LocalDate date,
    Gaskets gaskets,
    List<Spare> spares,
    List<Accessory> accessories) {

  public Bill {
    accessories = accessories == null ? List.of() : List.copyOf(accessories);
    items = List.copyOf(items);
    unpriced = List.copyOf(unpriced);
    spares = List.copyOf(spares);
  }

  /**
   * One thing bought.
   *
   * @param spare how many of the quantity are not laid: bought because a price break makes more
   *     cost less
   * @param unitPrice empty when no price is in force: to be sourced
   */
  public record Item(
      String item,
      String description,
      int quantity,
      int spare,
      String unit,
      Optional<Money> unitPrice,
      double weightLb) {

    public Optional<Money> extended() {
      return unitPrice.map(price -> price.multipliedBy(quantity));
    }

    /** So many of it; none of them beyond what is needed that was not before. */
    public Item times(int count) {
      return new Item(
          item,
          description,
          count,
          Math.min(spare, count),
          unit,
          unitPrice,
          weightLb * count / quantity);
    }

    /** At another price; empty for none. */
    public Item at(Optional<Money> price) {
      return new Item(item, description, quantity, spare, unit, price, weightLb);
    }
  }

  /**
   * Spare sections of one kind.
   *
   * @param item item number of the coupled hose, or of the hose they are cut from
   * @param sizeIn nominal hose size, in
   * @param ends as they would be laid
   */
  public record Spare(
      String item, double sizeIn, Part.Ends ends, Part.Section section, int count) {}

  /** Gaskets that come fitted (not charged again), are added, and are spares. */
  public record Gaskets(int fitted, int bought, int spare) {
    public static final Gaskets NONE = new Gaskets(0, 0, 0);
  }

  /** The total, and what it does not hold: {@code 523.15 USD and 2 parts without price}. */
  public String headline() {
    return MoneyWords.of(total) + Unpriced.beside(unpriced);
  }

  /** With the same goods at other prices. */
  public Bill priced(List<Item> now, LocalDate day) {
    Money sum =
        now.stream()
            .flatMap(item -> item.extended().stream())
            .reduce(Money.zero(total.getCurrencyUnit()), Money::plus);
    List<Unpriced> still =
        unpriced.stream()
            .filter(
                lacking ->
                    now.stream()
                        .filter(item -> item.unitPrice().isPresent())
                        .noneMatch(item -> lacking.item().equals(Optional.of(item.item()))))
            .toList();
    return new Bill(now, still, sum, day, gaskets, spares, accessories);
  }
}
