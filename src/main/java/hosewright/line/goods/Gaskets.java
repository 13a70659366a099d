package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds gaskets for an end among those of its size and family that the job may use. */
public final class Gaskets {
  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final PriceFloor floor;
  private final Map<End, List<Item>> fitting = new HashMap<>();
  private final Map<Wanted, Optional<Item>> cheapest = new HashMap<>();
  private final Map<End, Double> mostEach = new HashMap<>();
  private final Map<End, Double> leastEach = new HashMap<>();

  public Gaskets(Catalogue catalogue, Eligibility eligibility, PriceFloor floor) {
    this.catalogue = catalogue;
    this.eligibility = eligibility;
    this.floor = floor;
  }

  private record Wanted(End end, int quantity) {}

  /** The gasket that costs least in all for so many, one of which enough can be had if any. */
  Optional<Item> cheapest(End end, int quantity) {
    return cheapest.computeIfAbsent(
        new Wanted(end, quantity),
        wanted ->
            fitting(end).stream()
                .min(
                    Comparator.comparing((Item item) -> !eligibility.toBeHad(item, quantity))
                        .thenComparingDouble(item -> floor.ofAll(item, quantity))));
  }

  /** The least that so many or more can cost; zero where no gasket fits. */
  public double leastCost(End end, int quantity) {
    return fitting(end).stream()
        .mapToDouble(item -> floor.ofAtLeast(item, quantity))
        .min()
        .orElse(0);
  }

  /** The most that one gasket for an end costs; zero where none fits. */
  public double mostEach(End end) {
    return mostEach.computeIfAbsent(end, this::findMostEach);
  }

  private double findMostEach(End end) {
    return fitting(end).stream().mapToDouble(item -> floor.ofAll(item, 1)).max().orElse(0);
  }

  /** The least that one gasket for an end costs however many are bought. */
  double leastEach(End end) {
    return leastEach.computeIfAbsent(end, this::findLeastEach);
  }

  private double findLeastEach(End end) {
    return fitting(end).stream()
        .mapToDouble(item -> floor.ofOneOf(item, 1, Integer.MAX_VALUE))
        .min()
        .orElse(0);
  }

  /** Whether no gasket serves both ends. */
  public boolean apart(End one, End other) {
    return !alike(one, other) && fitting(one).stream().noneMatch(fitting(other)::contains);
  }

  private List<Item> fitting(End end) {
    return fitting.computeIfAbsent(
        end,
        e ->
            eligibility.bearing(
                catalogue.ofKind(ItemKind.GASKET).stream()
                    .filter(eligibility::wetted)
                    .filter(item -> item.ends().stream().anyMatch(fits -> alike(fits, e)))
                    .toList()));
  }

  private static boolean alike(End one, End other) {
    return one.sizeIn() == other.sizeIn() && one.family().equals(other.family());
  }
}
