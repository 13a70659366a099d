package hosewright.quote;

import hosewright.quote.Quote.QuoteLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * What a quote's goods cost the dealer and what is left. For the dealer's eyes only: it is never
 * kept in a quote and never stands on a paper.
 *
 * @param lines each line of the total
 * @param net of the lines whose cost is known
 * @param cost of the same lines
 * @param fraction (net - cost) / net of those lines; empty when no cost is known or they are free
 * @param unknown positions of lines whose cost is not known: unknown is never taken for nothing
 */
public record Margin(
    List<LineMargin> lines,
    Money net,
    Money cost,
    Optional<BigDecimal> fraction,
    List<Integer> unknown) {

  /** Digits kept of a margin: it is compared and shown, never multiplied on. */
  private static final int DIGITS = 4;

  /** One line; empty where the cost is not known, or the line is free. */
  public record LineMargin(
      int position, String item, Money net, Optional<Money> cost, Optional<BigDecimal> fraction) {}

  /**
   * The margin.
   *
   * @param unitCost what one unit of a line costs; empty when not known, or in another currency
   */
  public static Margin of(Quote quote, Function<QuoteLine, Optional<Money>> unitCost) {
    List<LineMargin> lines = quote.lines().stream().map(line -> line(line, unitCost)).toList();
    Money zero = Money.zero(quote.total().getCurrencyUnit());
    Money net = zero;
    Money cost = zero;
    for (LineMargin line : lines) {
      if (line.cost().isPresent()) {
        net = net.plus(line.net());
        cost = cost.plus(line.cost().get());
      }
    }
    List<Integer> unknown =
        lines.stream().filter(line -> line.cost().isEmpty()).map(LineMargin::position).toList();
    boolean any = unknown.size() < lines.size();
    return new Margin(lines, net, cost, any ? fraction(net, cost) : Optional.empty(), unknown);
  }

  /** Whether what is known lies under a floor; a floor is met when margin equals it. */
  public boolean below(BigDecimal floor) {
    return net.isZero()
        ? cost.isPositive()
        : net.getAmount().multiply(BigDecimal.ONE.subtract(floor)).compareTo(cost.getAmount()) < 0;
  }

  private static LineMargin line(QuoteLine line, Function<QuoteLine, Optional<Money>> unitCost) {
    Optional<Money> cost =
        unitCost
            .apply(line)
            .filter(each -> each.isSameCurrency(line.extended()))
            .map(each -> each.multipliedBy(line.quantity()));
    return new LineMargin(
        line.position(),
        line.key(),
        line.extended(),
        cost,
        cost.flatMap(known -> fraction(line.extended(), known)));
  }

  private static Optional<BigDecimal> fraction(Money net, Money cost) {
    return net.isZero()
        ? Optional.empty()
        : Optional.of(
            net.minus(cost).getAmount().divide(net.getAmount(), DIGITS, RoundingMode.HALF_UP));
  }
}
