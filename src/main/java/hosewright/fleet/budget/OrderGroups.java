package hosewright.fleet.budget;

import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * When to order an article so that its price breaks help most.
 *
 * <p>Each year's need is ordered in its year, or a year ahead together with the year's before; hose
 * ages on the shelf, so it is never ordered earlier. Every way of doing so is weighed.
 */
final class OrderGroups {
  private OrderGroups() {}

  /** What an order of so many in a year costs. */
  interface Price {
    Money of(int year, int quantity);
  }

  /**
   * One order.
   *
   * @param year year it is placed in
   * @param quantity sections ordered
   * @param ahead how many of them are next year's need
   */
  record Order(int year, int quantity, int ahead, Money cost) {}

  /**
   * The cheapest orders.
   *
   * @param needs need of each year, the first at 1
   */
  static List<Order> cheapest(int[] needs, Price price, Money nothing) {
    int years = needs.length - 1;
    Money[] cost = new Money[years + 3];
    boolean[] together = new boolean[years + 3];
    cost[years + 1] = nothing;
    cost[years + 2] = nothing;
    for (int year = years; year >= 1; year--) {
      Money alone = cost[year + 1].plus(ordered(price, year, needs[year], nothing));
      cost[year] = alone;
      if (year < years && needs[year] > 0 && needs[year + 1] > 0) {
        Money both =
            cost[year + 2].plus(ordered(price, year, needs[year] + needs[year + 1], nothing));
        if (both.isLessThan(alone)) {
          cost[year] = both;
          together[year] = true;
        }
      }
    }
    return orders(needs, together, price, nothing);
  }

  private static List<Order> orders(int[] needs, boolean[] together, Price price, Money nothing) {
    List<Order> orders = new ArrayList<>();
    int year = 1;
    while (year < needs.length) {
      int ahead = together[year] ? needs[year + 1] : 0;
      int quantity = needs[year] + ahead;
      if (quantity > 0) {
        orders.add(new Order(year, quantity, ahead, ordered(price, year, quantity, nothing)));
      }
      year += together[year] ? 2 : 1;
    }
    return orders;
  }

  private static Money ordered(Price price, int year, int quantity, Money nothing) {
    return quantity == 0 ? nothing : price.of(year, quantity);
  }
}
