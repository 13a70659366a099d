package hosewright.quote;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * What a quote earns, line by line and in all. For the dealer's own eyes: it is never kept in a
 * quote and never stands on a paper.
 *
 * @param all the margin of every line of the total together
 */
public record Earnings(List<LineEarnings> lines, Margin all) {

  /**
   * What one line earns.
   *
   * @param unitCost empty when no cost is in force
   * @param setBecause why its price was set by hand; empty where it was not
   */
  public record LineEarnings(
      int position,
      String item,
      Money net,
      Optional<Money> unitCost,
      Margin margin,
      Optional<String> setBecause) {}

  /**
   * The earnings.
   *
   * @param unitCost what one unit of a line costs; empty when not known
   */
  public static Earnings of(Quote quote, Function<QuoteLine, Optional<Money>> unitCost) {
    List<LineEarnings> lines =
        quote.lines().stream()
            .map(
                line -> {
                  Optional<Money> cost = unitCost.apply(line);
                  return new LineEarnings(
                      line.position(),
                      line.key(),
                      line.price().extended(),
                      cost,
                      Margin.of(List.of(part(line, cost))),
                      Optional.ofNullable(
                              quote.offer().amendments().byHand().prices().get(line.goods().key()))
                          .map(ByHand.SetPrice::reason));
                })
            .toList();
    List<Margin.Part> parts =
        quote.lines().stream().map(line -> part(line, unitCost.apply(line))).toList();
    Margin all = parts.isEmpty() ? Margin.unknown("the quote has no lines") : Margin.of(parts);
    return new Earnings(lines, all);
  }

  private static Margin.Part part(QuoteLine line, Optional<Money> unitCost) {
    return new Margin.Part(
        line.key(),
        line.price().extended(),
        unitCost.map(each -> each.multipliedBy(line.quantity())));
  }
}
