package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.order.Buying.Source;
import hosewright.order.Buying.Want;
import hosewright.order.Coming.Load;
import hosewright.order.Coming.Waiting;
import hosewright.order.OrderBook.Shelves;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes an order of an accepted quote: reserves what is free, counts on what comes and nobody waits
 * for, and buys the rest.
 */
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
   * @param shelves what is there and comes, and is promised to nobody
   */
  public Order raise(
      String number, Quote quote, Shelves shelves, Instant raisedAt, String raisedBy) {
    Map<String, Integer> left = new HashMap<>(shelves.free());
    Map<String, SupplierAnswer> asked = asked(number, quote);
    List<OrderLine> lines = new ArrayList<>();
    for (QuoteLine line : quote.lines()) {
      String code = stockCode(number, line, asked);
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
    Coming coming =
        shelves.coming(lines.stream().map(line -> line.ware().stockCode()).distinct().toList());
    List<PurchaseOrder> purchases = buying.buy(number, wants(lines, coming, asked));
    return new Order(
        number,
        new Order.Sold(
            quote.number(), quote.revision(), quote.customer().name(), quote.basis().title()),
        new Order.Timing(
            today,
            ShipDay.of(
                number,
                lines,
                coming.and(waiting(number, lines), loads(purchases)),
                ShipDay.workDays(lines, catalogue),
                today),
            raisedAt,
            raisedBy),
        Optional.empty(),
        lines,
        purchases);
  }

  /**
   * What suppliers were asked for and will be bought, by the code it has for this order alone: an
   * answer is to what a line of the quote is known by.
   */
  private Map<String, SupplierAnswer> asked(String order, Quote quote) {
    Map<String, SupplierAnswer> asked = new HashMap<>();
    for (QuoteLine line : quote.lines()) {
      if (line.goods().item().isEmpty()) {
        answers.stream()
            .filter(answer -> answer.chosen() && answer.wanted().equals(line.goods().key()))
            .findFirst()
            .ifPresent(answer -> asked.put(ownCode(order, line), answer));
      }
    }
    return asked;
  }

  private static String ownCode(String order, QuoteLine line) {
    return order + "/" + line.position();
  }

  private String stockCode(String order, QuoteLine line, Map<String, SupplierAnswer> asked) {
    if (line.goods().item().isEmpty()) {
      String own = ownCode(order, line);
      return asked.containsKey(own) ? own : "";
    }
    boolean work =
        catalogue.item(line.goods().item()).map(item -> item.kind().isWork()).orElse(false);
    return work ? "" : line.goods().item();
  }

  /** One want for each stock code, however many lines need it and beyond what comes unasked. */
  private List<Want> wants(
      List<OrderLine> lines, Coming coming, Map<String, SupplierAnswer> asked) {
    Map<String, Integer> missing = new LinkedHashMap<>();
    Map<String, OrderLine> first = new HashMap<>();
    for (OrderLine line : lines) {
      if (line.shortage() > 0) {
        missing.merge(line.ware().stockCode(), line.shortage(), Integer::sum);
        first.putIfAbsent(line.ware().stockCode(), line);
      }
    }
    List<Want> wants = new ArrayList<>();
    missing.forEach(
        (code, shortage) -> {
          int comes = coming.free(code).stream().mapToInt(Load::quantity).sum();
          if (shortage > comes) {
            want(first.get(code), shortage - comes, asked).ifPresent(wants::add);
          }
        });
    return wants;
  }

  private Optional<Want> want(OrderLine line, int needed, Map<String, SupplierAnswer> asked) {
    Optional<Item> item = catalogue.item(line.ware().item());
    if (item.isPresent()) {
      return buying.want(item.get(), needed);
    }
    return Optional.ofNullable(asked.get(line.ware().stockCode()))
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
                        Optional.of(answer.offer().unitCost()),
                        Optional.of(answer.offer().freight())),
                    false));
  }

  private static List<Waiting> waiting(String number, List<OrderLine> lines) {
    return lines.stream()
        .map(line -> new Waiting(number, line.position(), line.ware().stockCode(), line.shortage()))
        .toList();
  }

  /** What is bought now, numbered after all that was bought before. */
  private static List<Load> loads(List<PurchaseOrder> purchases) {
    return purchases.stream()
        .flatMap(
            purchase ->
                purchase.lines().stream()
                    .map(
                        line ->
                            new Load(
                                "new purchase order",
                                line.ware().stockCode(),
                                purchase.expectedOn(),
                                line.outstanding())))
        .toList();
  }
}
