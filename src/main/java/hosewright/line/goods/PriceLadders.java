package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * A buyer's prices, looked up once for each item: a search asks for the same ones thousands of
 * times.
 */
public final class PriceLadders implements NetPrice {
  private final NetPrice prices;
  private final Map<String, Ladder> ladders = new HashMap<>();

  public PriceLadders(NetPrice prices) {
    this.prices = prices;
  }

  /** From this quantity up, this price. */
  private record Rung(int quantity, Optional<Money> unitPrice) {}

  private record Ladder(List<Rung> rungs, List<Integer> quantities) {}

  @Override
  public Optional<Money> unitPrice(Item item, int quantity) {
    Optional<Money> price = Optional.empty();
    for (Rung rung : ladder(item).rungs()) {
      if (rung.quantity() <= quantity) {
        price = rung.unitPrice();
      }
    }
    return price;
  }

  @Override
  public List<Integer> breakQuantities(Item item) {
    return ladder(item).quantities();
  }

  private Ladder ladder(Item item) {
    return ladders.computeIfAbsent(item.number(), number -> climb(item));
  }

  private Ladder climb(Item item) {
    List<Rung> rungs = new ArrayList<>();
    Stream.concat(Stream.of(1), prices.breakQuantities(item).stream())
        .distinct()
        .sorted()
        .forEach(quantity -> rungs.add(new Rung(quantity, prices.unitPrice(item, quantity))));
    return new Ladder(List.copyOf(rungs), rungs.stream().map(Rung::quantity).toList());
  }
}
