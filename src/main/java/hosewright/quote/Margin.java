package hosewright.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What is left of a net price once the supplier is paid: (net - cost) / net. For the dealer's own
 * eyes.
 *
 * @param fraction to six decimals, never rounded up to a floor it does not reach; below zero for a
 *     loss; empty when it is not known
 * @param atBest what it would be if all that is not known cost nothing; empty where not even that
 *     can be said
 * @param unknownBecause one reason for each part whose margin is not known; empty when all are
 */
public record Margin(
    Optional<BigDecimal> fraction, Optional<BigDecimal> atBest, List<String> unknownBecause) {
  private static final int DECIMALS = 6;

  public Margin {
    unknownBecause = List.copyOf(unknownBecause);
  }

  /** One of which nothing can be said. */
  static Margin unknown(String because) {
    return new Margin(Optional.empty(), Optional.empty(), List.of(because));
  }

  /**
   * One thing sold.
   *
   * @param name what a reason calls it, such as the item number
   * @param net what the customer pays for it in all
   * @param cost what it costs the dealer in all; empty when no cost is in force
   */
  public record Part(String name, Money net, Optional<Money> cost) {}

  /** How a margin stands to the least that is wanted. */
  public enum Floor {
    /** At the floor or above, or there is no floor. */
    KEPT,
    /** Below it, even if all that is not known cost nothing. */
    BELOW,
    /** Some cost is not known, so nobody can tell. */
    UNKNOWN
  }

  /** The margin of one price; a missing cost makes it unknown, never 100 %. */
  public static Margin of(Money net, Optional<Money> cost) {
    return of(List.of(new Part("", net, cost)));
  }

  /**
   * The margin of things sold together. Costs in another currency than the price are never set
   * against it.
   *
   * @throws IllegalArgumentException when there are none
   */
  public static Margin of(List<Part> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a margin is of one thing at least");
    }
    List<String> reasons = new ArrayList<>();
    BigDecimal net = BigDecimal.ZERO;
    BigDecimal cost = BigDecimal.ZERO;
    boolean oneCurrency = true;
    for (Part part : parts) {
      String name = part.name().isEmpty() ? "" : part.name() + ": ";
      if (!part.net().isSameCurrency(parts.get(0).net())) {
        reasons.add(name + "it is priced in " + part.net().getCurrencyUnit());
        oneCurrency = false;
        continue;
      }
      net = net.add(part.net().getAmount());
      if (part.cost().isEmpty()) {
        reasons.add(name + "no cost is in force");
      } else if (!part.cost().get().isSameCurrency(part.net())) {
        reasons.add(
            "%sthe cost is in %s and the price in %s"
                .formatted(
                    name, part.cost().get().getCurrencyUnit(), part.net().getCurrencyUnit()));
      } else {
        cost = cost.add(part.cost().get().getAmount());
      }
    }
    if (reasons.isEmpty() && net.signum() == 0) {
      reasons.add("the price is zero");
    }
    Optional<BigDecimal> atBest =
        oneCurrency && net.signum() > 0
            ? Optional.of(net.subtract(cost).divide(net, DECIMALS, RoundingMode.FLOOR))
            : Optional.empty();
    return new Margin(atBest.filter(known -> reasons.isEmpty()), atBest, reasons);
  }

  /** How it stands to the least wanted, a fraction. */
  public Floor against(Optional<BigDecimal> floor) {
    if (floor.isEmpty()) {
      return Floor.KEPT;
    }
    if (atBest.filter(best -> best.compareTo(floor.get()) < 0).isPresent()) {
      return Floor.BELOW;
    }
    return fraction.isPresent() ? Floor.KEPT : Floor.UNKNOWN;
  }
}
