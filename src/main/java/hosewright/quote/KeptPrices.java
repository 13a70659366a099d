package hosewright.quote;

import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.quote.QuoteLine.Break;
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
        .map(line -> priced(line, item, quantity))
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

  private Priced priced(QuoteLine line, String item, int quantity) {
    List<Break> breaks =
        line.price().breaks().isEmpty()
            ? List.of(new Break(1, line.price().unitPrice()))
            : line.price().breaks();
    return new Priced(
        line.goods().description(),
        line.goods().unit(),
        line.goods().unitCode(),
        line.quantity() == 0 ? 0 : line.goods().weightLb() / line.quantity(),
        listPrice(line, breaks, item, quantity),
        at(breaks, quantity).unitPrice(),
        breaks);
  }

  /** Documents kept before list prices stood in breaks have the one of their own quantity only. */
  private Money listPrice(QuoteLine line, List<Break> breaks, String item, int quantity) {
    Break step = at(breaks, quantity);
    if (step.listPrice().isPresent()) {
      return step.listPrice().get();
    }
    Money before = line.price().listPrice();
    if (step.equals(at(breaks, line.quantity()))) {
      return before;
    }
    // Today's list tells only where it still says what was quoted.
    boolean same =
        list.of(item, line.quantity()).map(Priced::listPrice).filter(before::equals).isPresent();
    return list.of(item, quantity)
        .map(Priced::listPrice)
        .filter(today -> same)
        .orElse(step.unitPrice());
  }

  /** Below the smallest break the first price holds, as in the workbook. */
  private static Break at(List<Break> breaks, int quantity) {
    List<Break> rising =
        breaks.stream().sorted(Comparator.comparingInt(Break::minimumQuantity)).toList();
    return rising.stream()
        .filter(step -> step.minimumQuantity() <= quantity)
        .reduce((smaller, larger) -> larger)
        .orElse(rising.get(0));
  }
}
