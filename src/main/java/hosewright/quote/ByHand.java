package hosewright.quote;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * How somebody set the lines of a quote up: at which prices, in which order, under which headings,
 * and shipped how.
 *
 * @param prices prices set by hand, by item number or free text: one item has one price in a quote
 * @param order keys of lines in the order wanted within their groups; lines not named follow
 * @param headings words above a line, by its key
 * @param remarks words for the buyer below a line, by its key
 * @param shipping freight set by hand, and where to
 */
public record ByHand(
    Map<String, SetPrice> prices,
    List<String> order,
    Map<String, String> headings,
    Map<String, String> remarks,
    Amendments.Shipping shipping) {
  public static final ByHand NONE =
      new ByHand(Map.of(), List.of(), Map.of(), Map.of(), Amendments.Shipping.USUAL);

  /** A price for one, before a line discount, and why; the reason is for the dealer's eyes. */
  public record SetPrice(Money price, String reason) {}

  public ByHand {
    prices = prices == null ? Map.of() : kept(prices);
    order = order == null ? List.of() : List.copyOf(order);
    headings = headings == null ? Map.of() : kept(headings);
    remarks = remarks == null ? Map.of() : kept(remarks);
    shipping = shipping == null ? Amendments.Shipping.USUAL : shipping;
  }

  private static <T> Map<String, T> kept(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** With a price set for an item. */
  public ByHand withPrice(String goods, SetPrice price) {
    return new ByHand(with(prices, goods, price), order, headings, remarks, shipping);
  }

  /** With an item at the price the list or its revision before gives it. */
  public ByHand withoutPrice(String goods) {
    Map<String, SetPrice> left = new LinkedHashMap<>(prices);
    left.remove(goods);
    return new ByHand(left, order, headings, remarks, shipping);
  }

  /** Without any price set by hand: they are for one buyer. */
  public ByHand withoutPrices() {
    return new ByHand(Map.of(), order, headings, remarks, shipping);
  }

  /** With another freight, or to another place. */
  ByHand shipped(Amendments.Shipping other) {
    return new ByHand(prices, order, headings, remarks, other);
  }

  /** With lines in this order. */
  public ByHand ordered(List<String> keys) {
    return new ByHand(prices, keys, headings, remarks, shipping);
  }

  /** With words above a line; empty takes them away. */
  public ByHand headed(String key, String words) {
    return new ByHand(prices, order, with(headings, key, words), remarks, shipping);
  }

  /** With words below a line; empty takes them away. */
  public ByHand remarked(String key, String words) {
    return new ByHand(prices, order, headings, with(remarks, key, words), shipping);
  }

  private static <T> Map<String, T> with(Map<String, T> map, String key, T value) {
    Map<String, T> now = new LinkedHashMap<>(map);
    if (value.equals("")) {
      now.remove(key);
    } else {
      now.put(key, value);
    }
    return now;
  }
}
