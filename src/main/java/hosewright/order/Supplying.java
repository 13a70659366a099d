package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.order.Buying.Source;
import hosewright.order.Buying.Want;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.Money;

/** Buys what an order is short of and nobody is asked for. */
public final class Supplying {
  private final Catalogue catalogue;
  private final From from;
  private final Buying buying;

  /**
   * Where to buy.
   *
   * @param supplier its code; each item's own where it is not said
   * @param each what one costs; the cost in force where it is not said
   * @param leadDays days until it is there; as the catalogue has it where it is not said
   */
  public record From(Optional<String> supplier, Optional<Money> each, OptionalInt leadDays) {}

  /**
   * @param catalogue has the items of the order with their costs, and every supplier
   */
  public Supplying(Catalogue catalogue, From from, LocalDate today) {
    this.catalogue = catalogue;
    this.from = from;
    this.buying = new Buying(catalogue, today, false);
  }

  /**
   * The purchase orders, still without numbers.
   *
   * @param quantities pieces by line; all that nobody is asked for where none is said
   * @throws BadInputException naming every line that needs no more, or that nobody is known to
   *     supply
   */
  public List<PurchaseOrder> buy(
      Order order, Coming coming, Optional<Map<Integer, Integer>> quantities) {
    List<OrderLine> goods = order.lines().stream().filter(OrderLine::isGoods).toList();
    quantities.ifPresent(
        asked ->
            Portion.check(
                asked,
                goods,
                OrderLine::position,
                line -> coming.unsupplied(order.number(), line.position()),
                "short and asked of nobody"));
    List<Want> wants = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (OrderLine line : goods) {
      int needed =
          quantities
              .map(asked -> asked.getOrDefault(line.position(), 0))
              .orElseGet(() -> coming.unsupplied(order.number(), line.position()));
      if (needed > 0) {
        want(line, needed).ifPresentOrElse(wants::add, () -> problems.add(nobody(line)));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return buying.buy(order.number(), wants);
  }

  private Optional<Want> want(OrderLine line, int needed) {
    Optional<Item> item = catalogue.item(line.ware().item());
    Optional<Want> usual = item.flatMap(one -> buying.want(one, needed));
    if (from.supplier().isEmpty()) {
      return usual.map(want -> want.from(said(want.source(), want.supplier())));
    }
    String supplier = from.supplier().get();
    Source source =
        usual
            .filter(want -> want.supplier().equals(supplier))
            .map(Want::source)
            .orElseGet(
                () ->
                    new Source(
                        supplier, 1, usualLeadDays(supplier), Optional.empty(), Optional.empty()));
    return Optional.of(
        new Want(
            line.ware().stockCode(),
            line.ware().description(),
            line.ware().unit(),
            needed,
            said(source, supplier),
            item.isPresent()));
  }

  private Source said(Source source, String supplier) {
    return new Source(
        supplier,
        source.pack(),
        from.leadDays().orElse(source.leadDays()),
        from.each().or(source::unitCost),
        source.freight());
  }

  private int usualLeadDays(String code) {
    return catalogue.suppliers().stream()
        .filter(supplier -> supplier.code().equals(code))
        .mapToInt(supplier -> supplier.leadDays())
        .findFirst()
        .orElse(0);
  }

  private static Problem nobody(OrderLine line) {
    return Problem.of(
        "from",
        "",
        "nobody supplies line %d, %s, any more: say who does"
            .formatted(line.position(), line.ware().description()));
  }
}
