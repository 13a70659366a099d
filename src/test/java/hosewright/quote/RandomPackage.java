package hosewright.quote;

import static hosewright.quote.GroupedQuotes.parts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A package of random groups and what a plain reckoning makes of it: no class of the program works
 * out a figure here.
 *
 * @param discountPercent what the buyer pays less than the list, whole percents
 */
public record RandomPackage(int discountPercent, List<Wanted> groups) {

  /** A group as it is asked for. */
  record Wanted(int count, boolean optional, Map<String, Integer> goods) {}

  /** One to five groups of one to four items each; the first is in the total. */
  public static RandomPackage of(Random random) {
    List<String> items = GroupedQuotes.BREAKS.keySet().stream().sorted().toList();
    List<Wanted> groups = new ArrayList<>();
    int many = 1 + random.nextInt(5);
    for (int i = 0; i < many; i++) {
      Map<String, Integer> goods = new LinkedHashMap<>();
      for (int line = 1 + random.nextInt(4); line > 0; line--) {
        goods.put(items.get(random.nextInt(items.size())), 1 + random.nextInt(12));
      }
      groups.add(new Wanted(1 + random.nextInt(3), i > 0 && random.nextInt(4) == 0, goods));
    }
    return new RandomPackage(random.nextInt(20), groups);
  }

  /** The quote the program makes of it. */
  public Quote quote() {
    Group[] asked = new Group[groups.size()];
    for (int i = 0; i < asked.length; i++) {
      Wanted one = groups.get(i);
      asked[i] = parts("Group " + (i + 1), one.count(), one.optional(), one.goods());
    }
    return GroupedQuotes.of(
        Amendments.NONE, BigDecimal.valueOf(discountPercent, 2).toPlainString(), asked);
  }

  /** What each group comes to. */
  public List<BigDecimal> subtotals() {
    return groups.stream().map(this::subtotal).toList();
  }

  /** What the groups in the total come to. */
  public BigDecimal subtotal() {
    return groups.stream()
        .filter(group -> !group.optional())
        .map(this::subtotal)
        .reduce(new BigDecimal("0.00"), BigDecimal::add);
  }

  private BigDecimal subtotal(Wanted group) {
    BigDecimal sum = new BigDecimal("0.00");
    for (Map.Entry<String, Integer> line : group.goods().entrySet()) {
      int quantity = line.getValue() * group.count();
      int inAll = inTotal(line.getKey()) + (group.optional() ? quantity : 0);
      sum = sum.add(each(line.getKey(), inAll).multiply(BigDecimal.valueOf(quantity)));
    }
    return sum;
  }

  private int inTotal(String item) {
    return groups.stream()
        .filter(group -> !group.optional())
        .mapToInt(group -> group.count() * group.goods().getOrDefault(item, 0))
        .sum();
  }

  private BigDecimal each(String item, int quantity) {
    int reached = 0;
    for (int from : GroupedQuotes.BREAKS.get(item).keySet()) {
      if (from <= quantity && from > reached) {
        reached = from;
      }
    }
    return new BigDecimal(GroupedQuotes.BREAKS.get(item).get(reached))
        .multiply(BigDecimal.valueOf(100 - discountPercent, 2))
        .setScale(2, RoundingMode.HALF_UP);
  }
}
