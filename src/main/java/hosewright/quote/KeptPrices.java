package hosewright.quote;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.quote.Quote.Break;
import hosewright.quote.Quote.OfferedLine;
import hosewright.quote.Quote.QuoteLine;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * The prices of an earlier revision, kept for every item that stood on it; what is new is priced by
 * the list of the day.
 */
public final class KeptPrices implements LinePrices, NetPrice {
  private final Map<String, QuoteLine> kept = new HashMap<>();
  private final LinePrices list;

  public KeptPrices(Quote earlier, LinePrices list) {
    this.list = list;
    Stream.concat(
            earlier.lines().stream(), earlier.offer().offered().stream().map(OfferedLine::line))
        .filter(line -> !line.goods().item().isEmpty())
        .forEach(line -> kept.putIfAbsent(line.goods().item(), line));
  }

  @Override
  public Optional<Priced> of(String item, int quantity) {
    return Optional.ofNullable(kept.get(item))
        .map(line -> priced(line, quantity))
        .or(() -> list.of(item, quantity));
  }

  @Override
  public Optional<Money> unitPrice(Item item, int quantity) {
    return of(item.number(), quantity).map(Priced::unitPrice);
  }

  @Override
  public List<Integer> breakQuantities(Item item) {
    return of(item.number(), 1).map(Priced::breaks).orElse(List.of()).stream()
        .map(Break::minimumQuantity)
        .toList();
  }

  private static Priced priced(QuoteLine line, int quantity) {
    List<Break> breaks =
        line.price().breaks().isEmpty()
            ? List.of(new Break(1, line.price().unitPrice()))
            : line.price().breaks();
    return new Priced(
        line.goods().description(),
        line.goods().unit(),
        line.goods().unitCode(),
        line.quantity() == 0 ? 0 : line.goods().weightLb() / line.quantity(),
        line.price().listPrice(),
        at(breaks, quantity),
        breaks);
  }

  /** Below the smallest break the first price holds, as in the workbook. */
  private static Money at(List<Break> breaks, int quantity) {
    List<Break> rising =
        breaks.stream().sorted(Comparator.comparingInt(Break::minimumQuantity)).toList();
    return rising.stream()
        .filter(step -> step.minimumQuantity() <= quantity)
        .reduce((smaller, larger) -> larger)
        .orElse(rising.get(0))
        .unitPrice();
  }
}
