package hosewright.order;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.MoneyWords;
import hosewright.catalogue.Supplier;
import hosewright.order.PurchaseOrder.PurchaseLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.Money;

/**
 * Buys what an order is short of: whole packs from each item's supplier, one purchase order for
 * each, and more packs where the supplier takes no smaller order.
 */
final class Buying {
  private final Catalogue catalogue;
  private final LocalDate today;
  private final boolean reachMinimum;

  /**
   * @param reachMinimum whether to buy more to reach a supplier's minimum order
   */
  Buying(Catalogue catalogue, LocalDate today, boolean reachMinimum) {
    this.catalogue = catalogue;
    this.today = today;
    this.reachMinimum = reachMinimum;
  }

  /**
   * Something to buy.
   *
   * @param kept whether more of it than is needed is of use on a shelf
   */
  record Want(
      String stockCode, String description, String unit, int needed, Source source, boolean kept) {

    String supplier() {
      return source.supplier();
    }

    int leadDays() {
      return source.leadDays();
    }

    /** The same from another source. */
    Want from(Source other) {
      return new Want(stockCode, description, unit, needed, other, kept);
    }
  }

  /**
   * Where something is bought.
   *
   * @param pack pieces in the supplier's pack
   * @param freight what the supplier asks for carriage of it all
   */
  record Source(
      String supplier, int pack, int leadDays, Optional<Money> unitCost, Optional<Money> freight) {

    /** One that asks nothing for carriage. */
    Source(String supplier, int pack, int leadDays, Optional<Money> unitCost) {
      this(supplier, pack, leadDays, unitCost, Optional.empty());
    }
  }

  /** Where an item is bought; empty when nobody supplies it any more. */
  Optional<Want> want(Item item, int needed) {
    String supplier = item.stocking().supplier();
    if (supplier.isEmpty() || item.discontinued()) {
      return Optional.empty();
    }
    return Optional.of(
        new Want(
            item.number(),
            item.description(),
            item.unit().word(),
            needed,
            new Source(
                supplier,
                item.stocking().packSize(),
                item.stocking().leadDays(),
                cost(item.number(), supplier),
                Optional.empty()),
            true));
  }

  private Optional<Money> cost(String item, String supplier) {
    return catalogue.costHistory(item).stream()
        .filter(row -> row.supplier().equals(supplier) && row.inForceOn(today))
        .max(Comparator.comparing(CostRow::from))
        .map(CostRow::unitCost);
  }

  /** One purchase order for each supplier, in the order of the wants; numbers are left empty. */
  List<PurchaseOrder> buy(String orderNumber, List<Want> wants) {
    Map<String, List<Want>> bySupplier = new LinkedHashMap<>();
    wants.forEach(
        want -> bySupplier.computeIfAbsent(want.supplier(), code -> new ArrayList<>()).add(want));
    List<PurchaseOrder> purchases = new ArrayList<>();
    bySupplier.forEach(
        (code, wanted) -> {
          Optional<Supplier> supplier =
              catalogue.suppliers().stream().filter(s -> s.code().equals(code)).findFirst();
          int leadDays = wanted.stream().mapToInt(Want::leadDays).max().orElse(0);
          PurchaseOrder packs =
              new PurchaseOrder(
                  "",
                  orderNumber,
                  code,
                  supplier.map(Supplier::name).orElse(code),
                  new PurchaseOrder.Terms(today.plusDays(leadDays), "", freight(wanted)),
                  lines(wanted));
          purchases.add(
              supplier
                  .flatMap(Supplier::minimumOrder)
                  .map(minimum -> reaching(minimum, packs, wanted))
                  .orElse(packs));
        });
    return purchases;
  }

  /** A supplier answers in one currency; what was agreed in another stands with its own answer. */
  private static Optional<Money> freight(List<Want> wanted) {
    List<Money> agreed = wanted.stream().flatMap(want -> want.source().freight().stream()).toList();
    return agreed.stream()
        .filter(sum -> sum.isSameCurrency(agreed.get(0)))
        .reduce(Money::plus)
        .filter(Money::isPositive);
  }

  private static List<PurchaseLine> lines(List<Want> wanted) {
    List<PurchaseLine> lines = new ArrayList<>();
    for (Want want : wanted) {
      lines.add(
          new PurchaseLine(
              lines.size() + 1,
              new PurchaseLine.Ware(want.stockCode(), want.description(), want.unit()),
              want.needed(),
              wholePacks(want.needed(), want.source().pack()),
              0,
              0,
              want.source().unitCost()));
    }
    return lines;
  }

  /** The least number in whole packs that is not under what is needed. */
  static int wholePacks(int needed, int pack) {
    return Math.multiplyExact((needed + pack - 1) / pack, pack);
  }

  private PurchaseOrder reaching(Money minimum, PurchaseOrder bought, List<Want> wanted) {
    Optional<Money> total = bought.goods();
    if (total.isEmpty() || !total.get().isSameCurrency(minimum)) {
      return bought.remarked(
          "minimum order " + MoneyWords.of(minimum) + ": not known whether it is reached");
    }
    if (!total.get().isLessThan(minimum)) {
      return bought;
    }
    Money missing = minimum.minus(total.get());
    OptionalInt best = reachMinimum ? leastOver(missing, bought, wanted) : OptionalInt.empty();
    if (best.isEmpty()) {
      return bought.remarked(
          MoneyWords.of(missing) + " under the minimum order " + MoneyWords.of(minimum));
    }
    int line = best.getAsInt();
    int more = packsFor(missing, bought.lines().get(line), wanted.get(line).source().pack());
    return withMore(bought, line, more)
        .remarked(
            "%d more of line %d to reach the minimum order %s"
                .formatted(more, line + 1, MoneyWords.of(minimum)));
  }

  /** The line of which whole packs reach the minimum with the least spent beyond it. */
  private static OptionalInt leastOver(Money missing, PurchaseOrder bought, List<Want> wanted) {
    OptionalInt best = OptionalInt.empty();
    Money least = null;
    for (int i = 0; i < bought.lines().size(); i++) {
      PurchaseLine line = bought.lines().get(i);
      Money cost = line.unitCost().orElseThrow();
      if (cost.isPositive() && wanted.get(i).kept()) {
        Money spent = cost.multipliedBy(packsFor(missing, line, wanted.get(i).source().pack()));
        if (least == null || spent.isLessThan(least)) {
          least = spent;
          best = OptionalInt.of(i);
        }
      }
    }
    return best;
  }

  /** How many pieces, in whole packs, come to the amount. */
  private static int packsFor(Money amount, PurchaseLine line, int pack) {
    BigDecimal packCost =
        line.unitCost().orElseThrow().getAmount().multiply(BigDecimal.valueOf(pack));
    return packCost.signum() == 0
        ? 0
        : amount.getAmount().divide(packCost, 0, RoundingMode.CEILING).intValueExact() * pack;
  }

  private static PurchaseOrder withMore(PurchaseOrder bought, int index, int more) {
    List<PurchaseLine> lines = new ArrayList<>(bought.lines());
    PurchaseLine line = lines.get(index);
    lines.set(
        index,
        new PurchaseLine(
            line.position(),
            line.ware(),
            line.needed(),
            line.quantity() + more,
            0,
            0,
            line.unitCost()));
    return bought.with(lines);
  }
}
