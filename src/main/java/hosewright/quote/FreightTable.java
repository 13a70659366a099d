package hosewright.quote;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Freight by weight: the charge of the first band that is as heavy as the goods or heavier. */
public record FreightTable(List<Band> bands) {

  /** Up to {@code upToLb} pounds, this charge. */
  public record Band(double upToLb, Money charge) {}

  public FreightTable {
    bands = bands.stream().sorted(Comparator.comparingDouble(Band::upToLb)).toList();
  }

  /**
   * The charge for a weight, lb.
   *
   * @return empty when the goods are heavier than the table goes: freight is then to be quoted
   */
  public Optional<Money> charge(double weightLb) {
    return bands.stream()
        .filter(band -> weightLb <= band.upToLb())
        .findFirst()
        .map(Band::charge);
  }
}
