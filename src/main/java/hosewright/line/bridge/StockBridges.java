package hosewright.line.bridge;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Placed;
import hosewright.line.goods.Eligibility;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Gender;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What joins two ends that do not mate, out of the adapters a dealer can deliver for water.
 *
 * <p>Chains whose every joint comes apart again go before any with a permanent joint, whatever they
 * cost: a hose is taken off more often than it is bought. A permanent joint is allowed only at one
 * of the two ends asked about, where a pipe may be.
 */
public final class StockBridges {
  /** So many more chains are fetched than asked for, because roundabout ones are dropped. */
  private static final int SPARE = 8;

  /** Makes fewer adapters lighter than any saving; above the price of any chain. */
  private static final double ONE_MORE_ADAPTER = 1e9;

  /** Hose threads that every dealer can get adapters to. */
  private static final List<String> COMMON_THREADS = List.of("NH", "NPSH");

  private final BridgeGraph graph;
  private final NetPrice prices;
  private final CurrencyUnit currency;
  private final double[] byPrice;
  private final double[] byCount;

  /**
   * @param currency the currency of every price
   */
  public StockBridges(Catalogue catalogue, NetPrice prices, CurrencyUnit currency) {
    this.graph =
        new BridgeGraph(
            catalogue.ofKind(ItemKind.ADAPTER).stream()
                .filter(item -> item.fluids().contains("water"))
                .filter(item -> Eligibility.toBeHad(item, prices))
                .toList());
    this.prices = prices;
    this.currency = currency;
    this.byPrice = graph.weigh(this::price);
    this.byCount = Arrays.stream(byPrice).map(price -> ONE_MORE_ADAPTER + price).toArray();
  }

  /**
   * A chain of adapters, with one or two to be found elsewhere where the catalogue alone has none.
   *
   * @param links what the catalogue has, in the order water meets it
   * @param cost of {@code links}
   * @param missing adapters to be found elsewhere; empty when {@code links} does it
   * @param missingFirst whether they stand before the links rather than after them
   */
  public record Way(List<Bridge.Link> links, Money cost, List<Gap> missing, boolean missingFirst) {
    public Way {
      links = List.copyOf(links);
      missing = List.copyOf(missing);
    }

    /** How wide it is where it is narrower than both ends it joins, in; empty where it is not. */
    public OptionalDouble neckIn(End from, End to) {
      return links.stream()
          .filter(link -> !fullSize(link, from, to))
          .mapToDouble(StockBridges::waterwayIn)
          .min();
    }
  }

  /** A two-ended adapter that nobody here stocks, the way the water meets it. */
  public record Gap(End upstream, End downstream) {}

  /**
   * The cheapest chains, best first; removable ones go first.
   *
   * @param from the open end, looking downstream
   * @param to the end to be met
   * @param most how many to give at the most
   */
  public List<Way> cheapest(End from, End to, int most) {
    return ways(from, to, byPrice, most);
  }

  /** The chain of fewest adapters, cheapest of those; a removable one where there is one. */
  public Optional<Way> shortest(End from, End to) {
    return ways(from, to, byCount, 1).stream().findFirst();
  }

  /** What a permanent joint would save: a chain that has one and costs less than {@code cost}. */
  public Optional<Way> permanentBelow(Money cost, End from, End to) {
    return ways(from, to, true, byPrice, 1, link -> fullSize(link, from, to)).stream()
        .filter(way -> way.cost().isLessThan(cost))
        .findFirst();
  }

  /** What a chain that is narrower than both ends would save against {@code cost}. */
  public Optional<Way> narrowBelow(Money cost, End from, End to) {
    return ways(from, to, false, byPrice, 1, link -> true).stream()
        .filter(way -> way.neckIn(from, to).isPresent())
        .filter(way -> way.cost().isLessThan(cost))
        .findFirst();
  }

  /** The one adapter that would do it, to be found elsewhere; empty where none could. */
  public Optional<Way> toSource(End from, End to) {
    return facing(from)
        .flatMap(upstream -> facing(to).map(downstream -> new Gap(upstream, downstream)))
        .map(gap -> sourced(List.of(gap)));
  }

  /**
   * Ways by a common hose thread, with one adapter to be found elsewhere and the rest out of the
   * catalogue; cheapest first.
   */
  public List<Way> withOneSourced(End from, End to) {
    return commonMales(from, to)
        .flatMap(male -> by(male, from, to).stream())
        .sorted(Comparator.comparing(Way::cost).thenComparingInt(way -> way.links().size()))
        .toList();
  }

  /** Two adapters that meet in a common hose thread, both to be found elsewhere. */
  public List<Way> withTwoSourced(End from, End to) {
    List<Way> ways = new ArrayList<>();
    commonMales(from, to)
        .filter(male -> !Mating.of(from, swivelOver(male)).mates() && !Mating.of(male, to).mates())
        .forEach(
            male ->
                facing(from)
                    .flatMap(
                        first ->
                            facing(to)
                                .map(
                                    last ->
                                        List.of(
                                            new Gap(first, male), new Gap(swivelOver(male), last))))
                    .ifPresent(gaps -> ways.add(sourced(gaps))));
    return ways;
  }

  private Way sourced(List<Gap> gaps) {
    return new Way(List.of(), Money.zero(currency), gaps, true);
  }

  private static Stream<End> commonMales(End from, End to) {
    return COMMON_THREADS.stream()
        .flatMap(
            thread ->
                Stream.of(from.sizeIn(), to.sizeIn())
                    .distinct()
                    .map(size -> new End(size, thread, Gender.MALE, false)))
        .filter(End::listed);
  }

  private static End swivelOver(End male) {
    return new End(male.sizeIn(), male.family(), Gender.FEMALE, true);
  }

  private List<Way> by(End male, End from, End to) {
    End female = swivelOver(male);
    List<Way> ways = new ArrayList<>();
    for (Way way : cheapest(male, to, 1)) {
      facing(from)
          .map(half -> new Gap(half, male))
          .ifPresent(gap -> ways.add(with(gap, way, true)));
    }
    for (Way way : cheapest(from, female, 1)) {
      facing(to)
          .map(half -> new Gap(female, half))
          .ifPresent(gap -> ways.add(with(gap, way, false)));
    }
    // Without links the missing adapter alone would do, and with more the chain grows too long.
    ways.removeIf(way -> way.links().isEmpty() || way.links().size() >= BridgeGraph.MOST_ADAPTERS);
    return ways;
  }

  private static Way with(Gap gap, Way way, boolean first) {
    return new Way(way.links(), way.cost(), List.of(gap), first);
  }

  /** Of full size; others only where there is none. */
  private List<Way> ways(End from, End to, double[] weights, int most) {
    List<Way> full = ways(from, to, weights, most, link -> fullSize(link, from, to));
    return full.isEmpty() ? ways(from, to, weights, most, link -> true) : full;
  }

  private List<Way> ways(
      End from, End to, double[] weights, int most, Predicate<Bridge.Link> allowed) {
    List<Way> ways = new ArrayList<>(ways(from, to, false, weights, most, allowed));
    if (ways.size() < most) {
      ways(from, to, true, weights, most + ways.size(), allowed).stream()
          .filter(way -> !ways.contains(way))
          .limit(most - ways.size())
          .toList()
          .forEach(ways::add);
    }
    return ways;
  }

  private List<Way> ways(
      End from,
      End to,
      boolean permanent,
      double[] weights,
      int most,
      Predicate<Bridge.Link> allowed) {
    List<Way> ways = new ArrayList<>();
    Iterator<Bridge> lightestFirst =
        graph.passage(from, to, permanent, permanent, allowed).lightestFirst(weights);
    for (int looked = 0; looked < most + SPARE && lightestFirst.hasNext(); looked++) {
      List<Bridge.Link> links = lightestFirst.next().links();
      if (ways.size() < most && straight(from, links)) {
        ways.add(new Way(links, cost(links), List.of(), false));
      }
    }
    return ways;
  }

  private static boolean fullSize(Bridge.Link link, End from, End to) {
    return Between.wideEnough(waterwayIn(link), Math.min(from.sizeIn(), to.sizeIn()));
  }

  private static double waterwayIn(Bridge.Link link) {
    return Placed.adapter(link, 1).waterwayIn();
  }

  /** A chain that comes back to an end it has left behind holds an adapter for nothing. */
  private static boolean straight(End from, List<Bridge.Link> links) {
    Set<End> open = new HashSet<>(Set.of(from));
    return links.stream().allMatch(link -> open.add(link.downstream()));
  }

  /**
   * The half to ask for against an end: one that comes apart again where there is such a half, and
   * a swivel where a gasket is to be screwed up tight; empty where no half takes the end.
   */
  static Optional<End> facing(End end) {
    Verdict named = Mating.of(end, end.opposite());
    if (named.removable() || named.outcome() == Verdict.Outcome.MEASURE) {
      return Optional.of(tightened(end.opposite()));
    }
    return Families.ends().stream()
        .filter(other -> Mating.of(end, other).removable())
        .findFirst()
        .map(StockBridges::tightened)
        .or(() -> Optional.of(end.opposite()).filter(half -> named.mates()));
  }

  private static End tightened(End half) {
    boolean swivels = half.gender() == Gender.FEMALE && half.threaded() && half.carriesGasket();
    return new End(half.sizeIn(), half.family(), half.gender(), swivels);
  }

  private double price(Bridge.Link link) {
    return prices.unitPrice(link.item(), 1).orElseThrow().getAmount().doubleValue();
  }

  private Money cost(List<Bridge.Link> links) {
    Money cost = Money.zero(currency);
    for (Bridge.Link link : links) {
      int alike = (int) links.stream().filter(l -> l.item().equals(link.item())).count();
      cost = cost.plus(prices.unitPrice(link.item(), alike).orElseThrow());
    }
    return cost;
  }
}
