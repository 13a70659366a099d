package hosewright.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What suppliers still bring and who waits for it: the oldest promise has what comes first,
 * whichever order it was bought for. An older order has the lower number.
 */
public final class Coming {
  private static final Comparator<Waiting> OLDEST_PROMISE =
      Comparator.comparing(Waiting::order, Coming::byNumber).thenComparing(Waiting::line);
  private static final Comparator<Load> SOONEST =
      Comparator.comparing(Load::expectedOn).thenComparing(Load::purchase, Coming::byNumber);

  private final Map<Place, List<Load>> serving = new LinkedHashMap<>();
  private final Map<Place, Integer> missing = new LinkedHashMap<>();
  private final Map<String, List<Load>> free = new LinkedHashMap<>();
  private final List<Waiting> waiting;
  private final List<Load> loads;

  /**
   * A line of an order that is short.
   *
   * @param shortage pieces wanted and not on the shelf for it
   */
  public record Waiting(String order, int line, String stockCode, int shortage) {}

  /** So many pieces that a purchase order will bring. */
  public record Load(String purchase, String stockCode, LocalDate expectedOn, int quantity) {
    private Load of(int part) {
      return new Load(purchase, stockCode, expectedOn, part);
    }
  }

  private record Place(String order, int line) {}

  private Coming(List<Waiting> waiting, List<Load> loads) {
    this.waiting = List.copyOf(waiting);
    this.loads = List.copyOf(loads);
  }

  /** Who gets what. */
  public static Coming of(List<Waiting> waiting, List<Load> loads) {
    Coming coming = new Coming(waiting, loads);
    loads.stream()
        .filter(load -> load.quantity() > 0)
        .sorted(SOONEST)
        .forEach(
            load ->
                coming.free.computeIfAbsent(load.stockCode(), code -> new ArrayList<>()).add(load));
    waiting.stream()
        .filter(one -> one.shortage() > 0)
        .sorted(OLDEST_PROMISE)
        .forEach(coming::serve);
    return coming;
  }

  /** Who gets what when so many more wait and come. */
  Coming and(List<Waiting> more, List<Load> bought) {
    return of(
        Stream.concat(waiting.stream(), more.stream()).toList(),
        Stream.concat(loads.stream(), bought.stream()).toList());
  }

  private void serve(Waiting one) {
    Place place = new Place(one.order(), one.line());
    List<Load> taken = take(one.stockCode(), one.shortage());
    serving.put(place, taken);
    missing.put(place, one.shortage() - pieces(taken));
  }

  private List<Load> take(String code, int wanted) {
    List<Load> there = free.getOrDefault(code, List.of());
    List<Load> taken = new ArrayList<>();
    int left = wanted;
    while (left > 0 && !there.isEmpty()) {
      Load next = there.remove(0);
      int part = Math.min(left, next.quantity());
      taken.add(next.of(part));
      left -= part;
      if (part < next.quantity()) {
        there.add(0, next.of(next.quantity() - part));
      }
    }
    return taken;
  }

  private static int pieces(List<Load> loads) {
    return loads.stream().mapToInt(Load::quantity).sum();
  }

  /** What will bring what a line is short of, soonest first; nothing where nobody is asked. */
  public List<Load> serving(String order, int line) {
    return List.copyOf(serving.getOrDefault(new Place(order, line), List.of()));
  }

  /** How many a line is short of that nobody is asked for. */
  public int unsupplied(String order, int line) {
    return missing.getOrDefault(new Place(order, line), 0);
  }

  /** The oldest order that waits for goods of a purchase order, other than the one named. */
  public Optional<String> otherWaitingFor(String purchase, String order) {
    return serving.entrySet().stream()
        .filter(entry -> !entry.getKey().order().equals(order))
        .filter(entry -> entry.getValue().stream().anyMatch(of -> of.purchase().equals(purchase)))
        .map(entry -> entry.getKey().order())
        .min(Coming::byNumber);
  }

  /** Numbers have six digits until there are more papers than that. */
  static int byNumber(String one, String other) {
    return one.length() == other.length()
        ? one.compareTo(other)
        : Integer.compare(one.length(), other.length());
  }

  /** What comes and nobody waits for yet, soonest first. */
  public List<Load> free(String stockCode) {
    return List.copyOf(free.getOrDefault(stockCode, List.of()));
  }
}
