package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.SplittableRandom;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

final class OrderGroupsTest {
  private static final Money NOTHING = Money.zero(CurrencyUnit.USD);

  /** 10.00 each, 9.00 from ten up. */
  private static Money broken(int year, int quantity) {
    return Money.of(CurrencyUnit.USD, quantity * (quantity >= 10 ? 9 : 10));
  }

  @Test
  void two_years_needs_are_ordered_together_where_a_break_pays() {
    List<OrderGroups.Order> orders =
        OrderGroups.cheapest(new int[] {0, 6, 4, 20}, OrderGroupsTest::broken, NOTHING);
    assertThat(orders)
        .extracting(OrderGroups.Order::quantity, OrderGroups.Order::ahead)
        .containsExactly(tuple(10, 4), tuple(20, 0));
  }

  @Test
  void no_other_way_of_ordering_a_year_ahead_is_cheaper() {
    for (long seed = 1; seed <= 500; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int[] needs = random.ints(7, 0, 12).toArray();
      needs[0] = 0;
      int[] each = random.ints(7, 8, 13).toArray();
      OrderGroups.Price price =
          (year, of) ->
              Money.of(CurrencyUnit.USD, (long) of * each[year]).minus(of >= 10 ? of * 2 : 0);
      Money found =
          OrderGroups.cheapest(needs, price, NOTHING).stream()
              .map(OrderGroups.Order::cost)
              .reduce(NOTHING, Money::plus);
      assertThat(found).as("seed %d", seed).isEqualTo(least(needs, 1, price));
    }
  }

  private static Money least(int[] needs, int year, OrderGroups.Price price) {
    if (year >= needs.length) {
      return NOTHING;
    }
    Money alone = cost(needs[year], year, price).plus(least(needs, year + 1, price));
    if (year + 1 >= needs.length || needs[year] == 0) {
      return alone;
    }
    Money both =
        cost(needs[year] + needs[year + 1], year, price).plus(least(needs, year + 2, price));
    return both.isLessThan(alone) ? both : alone;
  }

  private static Money cost(int quantity, int year, OrderGroups.Price price) {
    return quantity == 0 ? NOTHING : price.of(year, quantity);
  }
}
