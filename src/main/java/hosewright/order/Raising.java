package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.order.Buying.Source;
import hosewright.order.Buying.Want;
import hosewright.quote.Quote;
import hosewright.quote.Quote.QuoteLine;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes an order of an accepted quote: reserves what is free and buys the rest. */
public final class Raising {
  private final Catalogue catalogue;
  private final List<SupplierAnswer> answers;
  private final LocalDate today;
  private final Buying buying;

  /**
   * @param answers what suppliers answered for parts without a price; the chosen are bought
   * @param reachMinimum whether to buy more to reach a supplier's minimum order
   */
  public Raising(
      Catalogue catalogue, List<SupplierAnswer> answers, LocalDate today, boolean reachMinimum) {
    this.catalogue = catalogue;
    this.answers = List.copyOf(answers);
    this.today = today;
    this.buying = new Buying(catalogue, today, reachMinimum);
  }

  /**
   * The order, its purchase orders still without numbers.
   *
   * @param free pieces on the shelf and promised to nobody, by stock code
   */
  public Order raise(
      String number, Quote quote, Map<String, Integer> free, Instant raisedAt, String raisedBy) {
    Map<String, Integer> left = new HashMap<>(free);
    List<OrderLine> lines = new ArrayList<>();
    for (QuoteLine line : quote.lines()) {
      String code = stockCode(number, line);
      int reserved = Math.min(line.quantity(), Math.max(0, left.getOrDefault(code, 0)));
      left.merge(code, -reserved, Integer::sum);
      lines.add(
          new OrderLine(
              lines.size() + 1,
              line.position(),
              new OrderLine.Ware(
                  code, line.goods().item(), line.goods().description(), line.goods().unit()),
              new OrderLine.Counts(line.quantity(), reserved, 0, 0)));
    }
    List<PurchaseOrder> purchases = buying.buy(number, wants(lines));
    return new Order(
        number,
        new Order.Sold(
            quote.number(), quote.revision(), quote.customer().name(), quote.basis().title()),
        new Order.Timing(today, shipOn(lines, purchases), raisedAt, raisedBy),
        Optional.empty(),
        lines,
        purchases);
  }

  private String stockCode(String order, QuoteLine line) {
    if (line.goods().item().isEmpty()) {
      return answer(line.goods().description()).isPresent() ? order + "/" + line.position() : "";
    }
    boolean work =
        catalogue.item(line.goods().item()).map(item -> item.kind().isWork()).orElse(false);
    return work ? "" : line.goods().item();
  }

  private Optional<SupplierAnswer> answer(String wanted) {
    return answers.stream()
        .filter(answer -> answer.chosen() && answer.wanted().equals(wanted))
        .findFirst();
  }

  /** One want for each stock code, however many lines need it. */
  private List<Want> wants(List<OrderLine> lines) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    Map<String, OrderLine> first = new HashMap<>();
    for (OrderLine line : lines) {
      if (line.shortage() > 0) {
        missing.merge(line.ware().stockCode(), line.shortage(), Integer::sum);
        first.putIfAbsent(line.ware().stockCode(), line);
      }
    }
    List<Want> wants = new ArrayList<>();
    missing.forEach((code, needed) -> want(first.get(code), needed).ifPresent(wants::add));
    return wants;
  }

  private Optional<Want> want(OrderLine line, int needed) {
    Optional<Item> item = catalogue.item(line.ware().item());
    if (item.isPresent()) {
      return buying.want(item.get(), needed);
    }
    return answer(line.ware().description())
        .filter(answer -> line.ware().item().isEmpty())
        .map(
            answer ->
                new Want(
                    line.ware().stockCode(),
                    line.ware().description(),
                    line.ware().unit(),
                    needed,
                    new Source(
                        answer.offer().supplier(),
                        1,
                        answer.offer().leadDays(),
                        Optional.of(answer.offer().unitCost())),
                    false));
  }

  /** The day the last goods are there, and then as long as the slowest work takes. */
  private LocalDate shipOn(List<OrderLine> lines, List<PurchaseOrder> purchases) {
    LocalDate goods =
        purchases.stream()
            .map(PurchaseOrder::expectedOn)
            .reduce(today, (one, other) -> one.isAfter(other) ? one : other);
    int workDays =
        lines.stream()
            .flatMap(line -> catalogue.item(line.ware().item()).stream())
            .filter(item -> item.kind().isWork())
            .mapToInt(item -> item.stocking().leadDays())
            .max()
            .orElse(0);
    return goods.plusDays(workDays);
  }
}
