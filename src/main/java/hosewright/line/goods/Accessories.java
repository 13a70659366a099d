package hosewright.line.goods;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.Sort;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a buyer asks for besides the line, by item number or by a word of the trade: which item each
 * is, how many the line needs, and whether it stands in the line.
 */
public final class Accessories {
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

  /** Kinds of which the line itself may use some, so that a price break is reached together. */
  private static final Set<ItemKind> PERHAPS_THE_LINES =
      EnumSet.of(
          ItemKind.WYE,
          ItemKind.SIAMESE,
          ItemKind.ADAPTER,
          ItemKind.SEALANT,
          ItemKind.VALVE,
          ItemKind.METER,
          ItemKind.BACKFLOW);

  /** Where the line decides how many are needed, perhaps none. */
  private static final Set<Place> BY_THE_LINE = EnumSet.of(Place.JOINTS, Place.ENDS);

  static {
    PERHAPS_THE_LINES.addAll(OF_THE_HOSE);
  }

  private final Job job;
  private final PriceFloor floor;
  private final Eligibility eligibility;
  private final Candidates candidates;
  private final Needs needs;
  private final Map<String, List<Item>> inLine = new HashMap<>();
  private final Map<Around, List<Piece>> pieces = new HashMap<>();
  private final Map<Around, Least> least = new HashMap<>();
  private final Set<Item> inVain;

  public Accessories(Job job, Catalogue catalogue, Eligibility eligibility, PriceFloor floor) {
    this.job = job;
    this.floor = floor;
    this.eligibility = eligibility;
    this.candidates = new Candidates(job, catalogue, eligibility);
    this.needs = new Needs(job, eligibility, floor, candidates);
    this.inVain = findInVain();
  }

  /**
   * Refuses what has no place in this line.
   *
   * @throws hosewright.problem.BadInputException naming each, and why
   */
  public void refuseMisfits() {
    new Misfits(job, candidates).refuse(this::inLine);
  }

  /** Why a sort stands where it does, in words that follow "because". */
  public static String why(Sort sort) {
    return Standing.of(sort).map(Standing::why).orElse("it was asked for");
  }

  /** What to see to where an item does not say what it is. */
  public static Optional<String> unsorted(Item item) {
    return item.sort() == Sort.UNKNOWN
        ? Optional.of(
            item.number()
                + " does not say what it is: see that it is what the line needs, and enough")
        : Optional.empty();
  }

  /** What was asked for and where: a shutoff stands at the nozzle where no place was named. */
  public Asked asked(String wanted) {
    Asked asked = Asked.of(wanted);
    return candidates.meant(asked.what()).place() == Place.APPLIANCE
        ? asked.orAtAppliance()
        : asked;
  }

  /**
   * The items that could stand in the line where this is asked for; empty when what is asked for is
   * not of a kind that stands in the line.
   */
  public List<Item> inLine(String wanted) {
    return inLine.computeIfAbsent(
        Asked.of(wanted).what(), what -> candidates.inLine(candidates.meant(what)));
  }

  /** What is bought besides the line and what stands in it. */
  List<Piece> of(Assembly line) {
    if (job.accessories().isEmpty()) {
      return List.of();
    }
    List<Piece> all = pieces.computeIfAbsent(Around.of(line.topology(), line.lays()), this::find);
    return all.stream().anyMatch(piece -> piece.place() == Place.SPLIT)
        ? all.stream().flatMap(piece -> beside(piece, line).stream()).toList()
        : all;
  }

  /** A wye or siamese that is asked for is the line's own, where the line has one. */
  private static Optional<Piece> beside(Piece piece, Assembly line) {
    if (piece.place() != Place.SPLIT) {
      return Optional.of(piece);
    }
    int standing =
        line.parts().stream()
            .filter(part -> part.item().map(Item::kind).equals(piece.item().map(Item::kind)))
            .mapToInt(Placed::lines)
            .sum();
    int more = piece.count() - standing;
    return more > 0 ? Optional.of(piece.counting(more)) : Optional.empty();
  }

  /**
   * What is asked for besides the line takes at the least, devices in it left out.
   *
   * @param cost no plan pays less for it
   * @param toSource how much of it has no price
   */
  public record Least(double cost, int toSource) {
    private static final Least NOTHING = new Least(0, 0);
  }

  /**
   * Items asked for by number, more of them than can be had: whatever line is laid, it lacks them.
   */
  Set<Item> inVain() {
    return inVain;
  }

  private Set<Item> findInVain() {
    Map<Item, Integer> least = new HashMap<>();
    for (String wanted : new LinkedHashSet<>(job.accessories())) {
      Asked asked = Asked.of(wanted);
      Meant meant = candidates.meant(asked.what());
      int times = asked.count().orElse(Collections.frequency(job.accessories(), wanted));
      meant
          .item()
          .filter(item -> meant.place() != Place.SPLIT)
          .filter(item -> asked.count().isPresent() || !BY_THE_LINE.contains(meant.place()))
          .ifPresent(item -> least.merge(item, inLine(wanted).isEmpty() ? times : 1, Integer::sum));
    }
    least.entrySet().removeIf(one -> eligibility.toBeHad(one.getKey(), one.getValue()));
    return Set.copyOf(least.keySet());
  }

  /** What everything asked for takes at the least beside the lines of a topology. */
  public Least least(Topology topology) {
    return job.accessories().isEmpty()
        ? Least.NOTHING
        : least.computeIfAbsent(
            Around.fewest(topology),
            around -> new Least(findLeastCost(around), findToSource(around)));
  }

  private int findToSource(Around around) {
    List<Piece> needed =
        pieces.computeIfAbsent(around, this::find).stream()
            .filter(piece -> piece.count() > 0)
            .toList();
    long missing = needed.stream().filter(piece -> piece.item().isEmpty()).count();
    Stream<Item> beside = needed.stream().flatMap(piece -> piece.item().stream());
    Stream<Item> standing =
        job.accessories().stream()
            .filter(wanted -> !inLine(wanted).isEmpty())
            .flatMap(wanted -> candidates.meant(Asked.of(wanted).what()).item().stream());
    long withoutPrice =
        Stream.concat(beside, standing)
            .distinct()
            .filter(item -> !eligibility.priced(item))
            .count();
    return (int) (missing + withoutPrice);
  }

  private List<Piece> find(Around around) {
    List<Piece> found = new ArrayList<>();
    for (String wanted : new LinkedHashSet<>(job.accessories())) {
      if (inLine(wanted).isEmpty()) {
        found.addAll(needs.of(wanted, Collections.frequency(job.accessories(), wanted), around));
      }
    }
    return List.copyOf(found);
  }

  private double findLeastCost(Around around) {
    List<Needs.Want> varying = new ArrayList<>();
    Map<Item, Integer> certain = new LinkedHashMap<>();
    for (String wanted : new LinkedHashSet<>(job.accessories())) {
      if (inLine(wanted).isEmpty()) {
        int times = Collections.frequency(job.accessories(), wanted);
        for (Needs.Want want : needs.wants(wanted, times, around)) {
          if (want.place() == Place.JOINTS || want.place() == Place.ENDS) {
            varying.add(want);
          } else {
            needs
                .choice(want)
                .ifPresent(item -> certain.merge(item, want.count(item), Integer::sum));
          }
        }
      }
    }
    double cost = 0;
    for (Map.Entry<Item, Integer> one : certain.entrySet()) {
      boolean alsoVarying =
          varying.stream().anyMatch(want -> want.candidates().contains(one.getKey()));
      cost +=
          alsoVarying || PERHAPS_THE_LINES.contains(one.getKey().kind())
              ? leastEach(one.getKey()) * one.getValue()
              : floor.ofAtLeast(one.getKey(), one.getValue());
    }
    for (Needs.Want want : varying) {
      cost +=
          want.candidates().stream()
              .mapToDouble(item -> leastEach(item) * want.count(item))
              .min()
              .orElse(0);
    }
    return cost;
  }

  /** One more of what the line itself is made of may cost nothing, where it reaches a break. */
  private double leastEach(Item item) {
    boolean perhapsCounted =
        OF_THE_HOSE.contains(item.kind())
            || item.kind() == ItemKind.WYE
            || item.kind() == ItemKind.SIAMESE;
    return perhapsCounted ? 0 : floor.ofOneOf(item, 1, Integer.MAX_VALUE);
  }
}
