package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.job.question.Asked;
import hosewright.line.assembly.HoseLine;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the items a buyer asks for besides the line: by item number, or by kind. */
public final class Accessories {
  /** Kinds that never touch the water. */
  private static final Set<ItemKind> DRY =
      EnumSet.of(ItemKind.WRENCH, ItemKind.RAMP, ItemKind.RESTRAINT);

  /** Kinds that sections and the joints between them are made of. */
  private static final Set<ItemKind> OF_THE_HOSE =
      EnumSet.of(
          ItemKind.HOSE,
          ItemKind.BULK_HOSE,
          ItemKind.COUPLING,
          ItemKind.ATTACHMENT,
          ItemKind.COUPLING_LABOUR,
          ItemKind.PRESSURE_TEST,
          ItemKind.GASKET);

  /** Kinds that stand in the water's way when they have two ends. */
  private static final Set<ItemKind> IN_LINE =
      EnumSet.of(ItemKind.VALVE, ItemKind.METER, ItemKind.BACKFLOW, ItemKind.GAUGE);

  private final Catalogue catalogue;
  private final Eligibility eligibility;
  private final PriceFloor floor;
  private final Map<Wanted, Optional<Item>> known = new HashMap<>();
  private final Map<String, List<Item>> inLine = new HashMap<>();
  private final Map<HoseLine, Double> leastCosts = new IdentityHashMap<>();
  private final Map<HoseLine, Integer> toSource = new IdentityHashMap<>();

  public Accessories(Catalogue catalogue, Eligibility eligibility, PriceFloor floor) {
    this.catalogue = catalogue;
    this.eligibility = eligibility;
    this.floor = floor;
  }

  /**
   * The items meant; where only a kind was named, what costs least of those that fit and of which
   * enough can be had, if any.
   *
   * @param wanted everything asked for
   * @param one one of them
   * @return empty when the catalogue has the kind but nothing of it that fits
   * @throws BadInputException when the word is neither an item number nor a kind
   */
  Optional<Item> find(List<String> wanted, String one, HoseLine hose) {
    int quantity = Collections.frequency(wanted, one);
    return known.computeIfAbsent(
        new Wanted(one, quantity, hose.sizeIn(), hose.inlet()),
        w ->
            meant(one, hose).stream()
                .min(
                    Comparator.comparing((Item item) -> !eligibility.toBeHad(item, quantity))
                        .thenComparingDouble(item -> floor.ofAll(item, quantity))));
  }

  private record Wanted(String word, int quantity, double hoseSizeIn, End hoseEnd) {}

  private List<Item> meant(String wanted, HoseLine hose) {
    Optional<Item> byNumber = catalogue.item(Asked.of(wanted).what());
    if (byNumber.isPresent()) {
      return List.of(byNumber.get());
    }
    String what = Asked.of(wanted).what();
    ItemKind kind = kind(what);
    return named(what).stream()
        .filter(item -> DRY.contains(kind) ? eligibility.toBeHad(item) : eligibility.wetted(item))
        .filter(item -> fits(item, hose))
        .toList();
  }

  /** The least that everything asked for besides the line can cost, devices in it left out. */
  public double leastCost(List<String> wanted, HoseLine hose) {
    return leastCosts.computeIfAbsent(hose, h -> findLeastCost(wanted, h));
  }

  /** How much of what is asked for beside a line of a hose has no price there. */
  public int toSource(List<String> wanted, HoseLine hose) {
    return toSource.computeIfAbsent(hose, h -> findToSource(wanted, h));
  }

  private int findToSource(List<String> wanted, HoseLine hose) {
    long missing =
        wanted.stream().filter(one -> inLine(one).isEmpty() && meant(one, hose).isEmpty()).count();
    long withoutPrice =
        wanted.stream()
            .map(one -> Asked.of(one).what())
            .distinct()
            .flatMap(number -> catalogue.item(number).stream())
            .filter(item -> !eligibility.priced(item))
            .count();
    return (int) (missing + withoutPrice);
  }

  private double findLeastCost(List<String> wanted, HoseLine hose) {
    double cost = 0;
    for (String one : wanted) {
      if (inLine(one).isEmpty()) {
        cost += meant(one, hose).stream().mapToDouble(this::leastCost).min().orElse(0);
      }
    }
    return cost;
  }

  /** One more of what the hose is made of may cost nothing, where it reaches a price break. */
  private double leastCost(Item item) {
    return OF_THE_HOSE.contains(item.kind()) ? 0 : floor.ofOne(item);
  }

  /**
   * The items that could stand in the line where this is asked for; empty when what is asked for is
   * not of a kind that stands in the line.
   */
  public List<Item> inLine(String wanted) {
    return inLine.computeIfAbsent(Asked.of(wanted).what(), this::findInLine);
  }

  /**
   * Refuses a place between sections for what has no two ends to stand between.
   *
   * @throws BadInputException when the catalogue has the kind, but nothing of it to be put in a
   *     line
   */
  public void refuseLoose(String wanted) {
    Asked asked = Asked.of(wanted);
    boolean stands =
        catalogue
            .item(asked.what())
            .map(item -> IN_LINE.contains(item.kind()))
            .orElseGet(() -> IN_LINE.contains(kind(asked.what())));
    if (asked.stationFt().isPresent() && stands && inLine(wanted).isEmpty()) {
      throw new BadInputException(
          "accessories",
          wanted,
          "a device with two ends to stand between two sections, and the catalogue has no such one"
              + " for this use");
    }
  }

  private List<Item> findInLine(String wanted) {
    Optional<Item> byNumber = catalogue.item(wanted);
    if (byNumber.isPresent()) {
      return byNumber.filter(Accessories::standsInLine).stream().toList();
    }
    return named(wanted).stream()
        .filter(Accessories::standsInLine)
        .filter(eligibility::wetted)
        .toList();
  }

  private static boolean standsInLine(Item item) {
    return IN_LINE.contains(item.kind()) && item.ends().size() == 2;
  }

  /** Items of a kind, and of a sort of it where words before it say which: "gate valve". */
  private List<Item> named(String wanted) {
    ItemKind kind = kind(wanted);
    String sort = wanted.substring(0, wanted.length() - kind.word().length()).strip();
    return catalogue.ofKind(kind).stream().filter(item -> describes(item, sort)).toList();
  }

  private ItemKind kind(String wanted) {
    return Arrays.stream(ItemKind.values())
        .filter(ItemKind::isAccessory)
        .filter(
            kind ->
                kind.word().equals(wanted)
                    || wanted.endsWith(" " + kind.word()) && hasSort(kind, wanted))
        .findFirst()
        .orElseThrow(() -> unknown(wanted));
  }

  private boolean hasSort(ItemKind kind, String wanted) {
    String sort = wanted.substring(0, wanted.length() - kind.word().length()).strip();
    return catalogue.ofKind(kind).stream().anyMatch(item -> describes(item, sort));
  }

  private static boolean describes(Item item, String sort) {
    String described = item.description().toLowerCase(Locale.ROOT);
    return described.contains(sort.toLowerCase(Locale.ROOT));
  }

  private BadInputException unknown(String wanted) {
    List<String> kinds =
        Arrays.stream(ItemKind.values()).filter(ItemKind::isAccessory).map(ItemKind::word).toList();
    List<String> words =
        Stream.concat(kinds.stream(), catalogue.items().stream().map(Item::number)).toList();
    return new BadInputException(
        List.of(
            new Problem(
                "accessories",
                wanted,
                "an item number of the catalogue, or one of " + String.join(", ", kinds),
                Nearest.to(wanted, words))));
  }

  /**
   * An accessory fits when it names an end of the line or a hose at least as large (the size on a
   * ramp or restraint is the largest it takes), or names none.
   */
  private static boolean fits(Item item, HoseLine hose) {
    boolean sizeFits = item.hose().isEmpty() || item.hose().get().sizeIn() >= hose.sizeIn();
    return sizeFits
        && (item.ends().isEmpty() || item.ends().stream().anyMatch(end -> like(end, hose.inlet())));
  }

  private static boolean like(End end, End hoseEnd) {
    return end.sizeIn() == hoseEnd.sizeIn() && end.family().equals(hoseEnd.family());
  }
}
