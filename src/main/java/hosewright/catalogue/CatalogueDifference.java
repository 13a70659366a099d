package hosewright.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * What a new catalogue would change of the one that stands, for somebody who buys from a day on.
 *
 * @param added items that are new
 * @param dropped items that are no longer listed
 * @param discontinued items that are listed still, and only now marked as discontinued
 * @param prices list prices that would differ, by item
 * @param facts everything else that would differ, by item
 */
public record CatalogueDifference(
    List<Item> added,
    List<Item> dropped,
    List<Item> discontinued,
    List<PriceChange> prices,
    List<FactChange> facts) {

  /**
   * A list price that would differ.
   *
   * @param from first day of the difference, never before the day asked about
   * @param minimumQuantity quantity from which it holds
   * @param before empty when there was none
   * @param after empty when there is none any more
   * @param percent of the price before, up is positive, to a tenth; empty where there is no
   *     comparing
   */
  public record PriceChange(
      String item,
      LocalDate from,
      int minimumQuantity,
      Optional<Money> before,
      Optional<Money> after,
      Optional<BigDecimal> percent) {

    static PriceChange of(
        String item, LocalDate from, int quantity, Optional<Money> before, Optional<Money> after) {
      return new PriceChange(item, from, quantity, before, after, percent(before, after));
    }

    /** Amounts in two currencies are never compared. */
    private static Optional<BigDecimal> percent(Optional<Money> before, Optional<Money> after) {
      if (before.isEmpty() || after.isEmpty() || before.get().isZero()) {
        return Optional.empty();
      }
      if (!before.get().isSameCurrency(after.get())) {
        return Optional.empty();
      }
      BigDecimal old = before.get().getAmount();
      return Optional.of(
          after
              .get()
              .getAmount()
              .subtract(old)
              .movePointRight(2)
              .divide(old, 1, RoundingMode.HALF_UP));
    }
  }

  /** One fact of an item that would differ, by the name of its column. */
  public record FactChange(String item, String column, String before, String after) {}

  public CatalogueDifference {
    added = List.copyOf(added);
    dropped = List.copyOf(dropped);
    discontinued = List.copyOf(discontinued);
    prices = List.copyOf(prices);
    facts = List.copyOf(facts);
  }

  /**
   * The difference.
   *
   * @param today prices that were over before it are history and not compared
   */
  public static CatalogueDifference between(Catalogue stands, Catalogue next, LocalDate today) {
    List<Item> added = new ArrayList<>();
    List<Item> discontinued = new ArrayList<>();
    List<PriceChange> prices = new ArrayList<>();
    List<FactChange> facts = new ArrayList<>();
    for (Item item : next.items()) {
      Optional<Item> before = stands.item(item.number());
      if (before.isEmpty()) {
        added.add(item);
      } else {
        if (item.discontinued() && !before.get().discontinued()) {
          discontinued.add(item);
        }
        facts.addAll(ItemFacts.changes(before.get(), item));
        prices.addAll(
            priceChanges(
                item.number(),
                stands.priceHistory(item.number()),
                next.priceHistory(item.number()),
                today));
      }
    }
    List<Item> dropped =
        stands.items().stream().filter(item -> next.item(item.number()).isEmpty()).toList();
    return new CatalogueDifference(added, dropped, discontinued, prices, facts);
  }

  /** Whether nothing would change. */
  public boolean isEmpty() {
    return added.isEmpty()
        && dropped.isEmpty()
        && discontinued.isEmpty()
        && prices.isEmpty()
        && facts.isEmpty();
  }

  /** How many prices would rise. */
  public int risen() {
    return (int) prices.stream().filter(change -> sign(change) > 0).count();
  }

  /** How many prices would fall. */
  public int fallen() {
    return (int) prices.stream().filter(change -> sign(change) < 0).count();
  }

  private static int sign(PriceChange change) {
    boolean comparable =
        change.before().isPresent()
            && change.after().isPresent()
            && change.before().get().isSameCurrency(change.after().get());
    return comparable ? change.after().get().compareTo(change.before().get()) : 0;
  }

  private static List<PriceChange> priceChanges(
      String item, List<PriceRow> before, List<PriceRow> after, LocalDate today) {
    if (before.equals(after)) {
      return List.of();
    }
    TreeSet<LocalDate> days = new TreeSet<>(List.of(today));
    TreeSet<Integer> quantities = new TreeSet<>();
    Stream.concat(before.stream(), after.stream())
        .forEach(
            row -> {
              quantities.add(row.minimumQuantity());
              days.add(row.from());
              row.until().ifPresent(until -> days.add(until.plusDays(1)));
            });
    List<PriceChange> changes = new ArrayList<>();
    for (int quantity : quantities) {
      PriceChange last = null;
      for (LocalDate day : days.tailSet(today)) {
        PriceChange change =
            PriceChange.of(
                item, day, quantity, at(before, quantity, day), at(after, quantity, day));
        boolean differs = !change.before().equals(change.after());
        if (differs && !sameSums(change, last)) {
          changes.add(change);
        }
        last = change;
      }
    }
    return changes;
  }

  private static boolean sameSums(PriceChange change, PriceChange other) {
    return other != null
        && Objects.equals(change.before(), other.before())
        && Objects.equals(change.after(), other.after());
  }

  /** What a buyer of so many pays; a break that is gone leaves the price of fewer. */
  private static Optional<Money> at(List<PriceRow> rows, int quantity, LocalDate day) {
    return rows.stream()
        .filter(row -> row.inForceOn(day) && row.minimumQuantity() <= quantity)
        .max(Comparator.comparingInt(PriceRow::minimumQuantity))
        .map(PriceRow::unitPrice);
  }
}
