package hosewright.line.search;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.BridgeGraph;
import hosewright.line.bridge.GapBridges;
import hosewright.line.bridge.Passage;
import hosewright.line.check.PracticeChecks;
import hosewright.line.check.PressureChecks;
import hosewright.line.goods.Availability;
import hosewright.line.goods.PriceFloor;
import hosewright.line.water.FittingLoss;
import hosewright.line.water.OuterVelocity;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The bridges over each gap, made of adapters that stand the pressure there. */
final class BridgeChoices {
  /** So little that a price decides only between adapters that lose the same. */
  private static final double PSI_PER_UNIT_OF_MONEY = 1e-9;

  /** Among so many there is one that swivels, where one must. */
  private static final int CHEAPEST_COMPARED = 8;

  private final Job job;
  private final Availability availability;
  private final BridgeGraph graph;
  private final PriceFloor floor;
  private final double[] costs;
  private final Map<Integer, double[]> lossesPsi = new HashMap<>();
  private final Map<Bridge.Link, Double> waterwaysIn = new IdentityHashMap<>();
  private final Map<Integer, Map<Bridge.Link, Boolean>> tooFast = new HashMap<>();

  /** Every working pressure an adapter is rated for, psi. */
  private final TreeSet<Double> ratingsPsi = new TreeSet<>();

  private final Map<Rated, Optional<GapBridges>> known = new HashMap<>();
  private final Map<Topology.Gap, List<Choice<List<Placed>>>> strongerAndWider = new HashMap<>();
  private final Map<Sourced, GapBridges> sourced = new HashMap<>();

  /**
   * @param adapters what bridges may be made of
   */
  BridgeChoices(Job job, List<Item> adapters, PriceFloor floor) {
    this.job = job;
    this.availability = Availability.of(job);
    this.graph = BridgeGraph.forPlans(adapters);
    this.floor = floor;
    this.costs = graph.weigh(link -> floor.ofOne(link.item()));
    adapters.forEach(item -> workingPsi(item).ifPresent(ratingsPsi::add));
  }

  /** A gap, and the least working pressure an adapter there is rated for. */
  private record Rated(Topology.Gap gap, double psi) {}

  /** A gap, and the pressure an adapter nobody stocks must be rated for there. */
  private record Sourced(Topology.Gap gap, OptionalDouble ratedPsi) {}

  /**
   * The bridges over a gap whose adapters are rated for a pressure, or not rated at all; empty when
   * the catalogue has none.
   *
   * @param seenPsi what every adapter there sees at the least in a plan that passes, psi
   */
  Optional<GapBridges> over(Topology.Gap gap, double seenPsi) {
    Double leastRatedPsi = ratingsPsi.ceiling(seenPsi - PressureChecks.HAIR_PSI);
    Rated rated = new Rated(gap, leastRatedPsi == null ? Double.POSITIVE_INFINITY : leastRatedPsi);
    return known.computeIfAbsent(rated, this::find);
  }

  /**
   * Of every bridge over a gap, however weak, some of the cheapest, and those that none betters in
   * what it loses and in what it is rated for; empty when the catalogue has none.
   */
  List<Choice<List<Placed>>> strongerAndWider(Topology.Gap gap) {
    return strongerAndWider.computeIfAbsent(gap, this::compare);
  }

  private List<Choice<List<Placed>>> compare(Topology.Gap gap) {
    Map<List<Placed>, Choice<List<Placed>>> compared = new LinkedHashMap<>();
    Optional<GapBridges> some = over(gap, 0);
    some.ifPresent(
        bridges ->
            bridges
                .cheapest(CHEAPEST_COMPARED)
                .forEach(bridge -> compared.put(bridge.value(), bridge)));
    while (some.isPresent()) {
      Choice<List<Placed>> widest = some.get().widest();
      compared.putIfAbsent(widest.value(), widest);
      Double stronger = ratingsPsi.higher(widest.ratedPsi());
      some = stronger == null ? Optional.empty() : over(gap, stronger);
    }
    return List.copyOf(compared.values());
  }

  private Optional<GapBridges> find(Rated rated) {
    Topology.Gap gap = rated.gap();
    Predicate<Bridge.Link> allowed =
        link ->
            workingPsi(link.item()).orElse(Double.POSITIVE_INFINITY) >= rated.psi()
                && availability.toBeHad(link.item(), gap.lines())
                && wideEnough(link, gap)
                && !tooFast(link, gap.lines());
    Passage passage = graph.passage(gap.from(), gap.to(), gap.fromPipe(), gap.toPipe(), allowed);
    OptionalDouble leastCost = passage.leastWeight(costs);
    if (leastCost.isEmpty()) {
      return Optional.empty();
    }
    double leastLossPsi = passage.leastWeight(lossesPsi(gap.lines())).orElseThrow();
    return Optional.of(
        new GapBridges(
            true,
            leastCost.getAsDouble() * gap.lines(),
            leastLossPsi,
            () -> passage.lightestFirst(costs),
            () -> passage.lightestFirst(byLoss(gap.lines())).next(),
            bridge -> choice(bridge, gap)));
  }

  private boolean wideEnough(Bridge.Link link, Topology.Gap gap) {
    return PracticeChecks.anyWidth(job)
        || Between.wideEnough(
            waterwaysIn.computeIfAbsent(link, one -> Placed.adapter(one, 1).waterwayIn()),
            gap.leastIn());
  }

  private boolean tooFast(Bridge.Link link, int lines) {
    return tooFast
        .computeIfAbsent(lines, count -> new IdentityHashMap<>())
        .computeIfAbsent(link, one -> OuterVelocity.forbids(job, Placed.adapter(one, lines)));
  }

  private OptionalDouble workingPsi(Item item) {
    return item.rating().workingPsiAt(job.service().temperatureOrUsualF());
  }

  private Choice<List<Placed>> choice(Bridge bridge, Topology.Gap gap) {
    double cost = bridge.links().stream().mapToDouble(link -> floor.ofOne(link.item())).sum();
    List<Placed> parts =
        bridge.links().stream().map(link -> Placed.adapter(link, gap.lines())).toList();
    double lossPsi = parts.stream().mapToDouble(this::lossPsi).sum();
    double ratedPsi =
        bridge.links().stream()
            .mapToDouble(link -> workingPsi(link.item()).orElse(Double.POSITIVE_INFINITY))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return new Choice<>(parts, cost * gap.lines(), lossPsi, ratedPsi);
  }

  private double[] lossesPsi(int lines) {
    return lossesPsi.computeIfAbsent(
        lines, count -> graph.weigh(link -> lossPsi(Placed.adapter(link, count))));
  }

  /** What an adapter loses, and of those that lose as much what it costs. */
  private double[] byLoss(int lines) {
    double[] weights = lossesPsi(lines).clone();
    for (int link = 0; link < weights.length; link++) {
      weights[link] += costs[link] * PSI_PER_UNIT_OF_MONEY;
    }
    return weights;
  }

  /** Zero where losses are not calculated. */
  private double lossPsi(Placed adapter) {
    return job.service().isWater() ? FittingLoss.of(adapter).lossPsi(job.flowGpm()) : 0;
  }

  /**
   * The adapter that would fill a gap nothing in the catalogue fills; it loses what its change of
   * bore does.
   *
   * @param ratedPsi the pressure it must be rated for, psi; empty where that is not known
   */
  GapBridges toSource(Topology.Gap gap, OptionalDouble ratedPsi) {
    return sourced.computeIfAbsent(new Sourced(gap, ratedPsi), this::find);
  }

  private GapBridges find(Sourced asked) {
    Topology.Gap gap = asked.gap();
    End upstream = facing(gap.from());
    End downstream = facing(gap.to());
    Placed adapter = Placed.toSource(upstream, downstream, asked.ratedPsi(), gap.lines());
    Choice<List<Placed>> choice =
        new Choice<>(List.of(adapter), 0, lossPsi(adapter), Double.POSITIVE_INFINITY);
    return new GapBridges(
        false,
        choice.leastCost(),
        choice.lossPsi(),
        () -> List.of(new Bridge(List.of())).iterator(),
        () -> new Bridge(List.of()),
        none -> choice);
  }

  /** The half that meets an end; a gasketed female is wanted with a swivel. */
  private static End facing(End end) {
    End half = end.opposite();
    boolean swivels = half.gender() == Gender.FEMALE && half.carriesGasket();
    return new End(half.sizeIn(), half.family(), half.gender(), swivels);
  }
}
