package hosewright.desk.purchase;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a group of a purchase pays for an item while the other groups buy theirs: all of it decides
 * the price break.
 *
 * @param others pieces the other groups buy, by item number
 * @param count how often the group itself is bought
 */
record TogetherPrices(NetPrice alone, Map<String, Integer> others, int count) implements NetPrice {

  @Override
  public Optional<Money> unitPrice(Item item, int quantity) {
    long all = (long) quantity * count + others.getOrDefault(item.number(), 0);
    return alone.unitPrice(item, (int) Math.min(all, Integer.MAX_VALUE));
  }

  @Override
  public List<Integer> breakQuantities(Item item) {
    int besides = others.getOrDefault(item.number(), 0);
    return alone.breakQuantities(item).stream()
        .map(from -> Math.max(1, (from - besides + count - 1) / count))
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * The least that one of an item can cost at any quantity: no purchase is cheaper. A gasket costs
   * nothing, since what one job brings to spare may serve another.
   */
  static NetPrice best(NetPrice alone) {
    return (item, quantity) ->
        alone.breakQuantities(item).stream()
            .flatMap(from -> alone.unitPrice(item, Math.max(from, quantity)).stream())
            .min(Money::compareTo)
            .or(() -> alone.unitPrice(item, quantity))
            .map(least -> item.kind() == ItemKind.GASKET ? least.multipliedBy(0) : least);
  }
}
