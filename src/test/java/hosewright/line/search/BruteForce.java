package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.check.Checks;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Eligibility;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Role;
import hosewright.line.water.PlanHydraulics;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Plans a job by looking at every line there is: every hose, both ways round, every lay with up to
 * one section to spare, every chain of adapters over every gap.
 *
 * <p>It leaves nothing out for its price or its pressure, so it is slow and plain. It shares with
 * the planner how hose is grouped, how a line is put together and checked, and the mating law; it
 * chains adapters, counts gaskets and prices ({@link PlainBill}) by itself.
 */
public final class BruteForce {
  private static final int MOST_ADAPTERS = 3;

  /** Judged here the plain way. */
  public static final Set<CheckId> OF_THE_TRADE =
      EnumSet.of(CheckId.NARROW_FITTING, CheckId.PLAIN_WYE, CheckId.HOSE_TYPE);

  /** What fails where something cannot be bought, or not in time. */
  private static final Set<CheckId> NOT_TO_BE_HAD =
      EnumSet.of(CheckId.DISCONTINUED_ITEMS, CheckId.IN_STOCK, CheckId.THERE_IN_TIME);

  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparing(Candidate::last).thenComparingLong(Candidate::cents);

  private final Job job;
  private final PlainPractice practice;
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final PlainLays plainLays;
  private final PlainBill bill;
  private final List<Item> adapters;
  private final Map<Gap, List<List<Placed>>> chainsOver = new HashMap<>();
  private final List<Candidate> candidates = new ArrayList<>();

  /** By candidate: several questions are asked of each. */
  private final Map<Candidate, List<Check>> failed = new IdentityHashMap<>();

  private long lines;

  /** At list prices. */
  public BruteForce(Job job, SmallShop shop) {
    this.job = job;
    this.catalogue = shop.catalogue();
    this.prices = catalogue.listPricesOn(SmallShop.DATE);
    this.practice = new PlainPractice(job);
    this.plainLays = new PlainLays(job);
    Eligibility eligibility = new Eligibility(job, prices);
    this.bill = new PlainBill(job, catalogue, prices);
    this.adapters =
        catalogue.ofKind(ItemKind.ADAPTER).stream().filter(eligibility::wetted).toList();
  }

  /**
   * @param spare whether a section could be left out
   * @param last whether a rule ranks it last
   * @param odd whether one is laid that another of its make and length does no worse than
   */
  private record Candidate(
      Assembly line,
      boolean last,
      boolean spare,
      boolean odd,
      List<Basket.Purchase> purchases,
      long cents) {
    Map<String, Integer> bought() {
      Map<String, Integer> bought = new TreeMap<>();
      purchases.forEach(purchase -> bought.put(purchase.item().number(), purchase.bought()));
      return bought;
    }
  }

  /** How many whole lines there are. */
  long lines() {
    return lines;
  }

  /**
   * The least cost in cents of a line that passes every check, by hose size.
   *
   * @param mostLines how many lines to look at the most
   * @return empty when there are more
   */
  Optional<Map<Double, Long>> cheapestBySize(int mostLines) {
    lookAtEveryLine(mostLines);
    if (lines > mostLines) {
      return Optional.empty();
    }
    candidates.sort(BEST_FIRST);
    Map<Double, Long> cheapest = new TreeMap<>();
    for (Candidate candidate : candidates) {
      double sizeIn = candidate.line().topology().hose().sizeIn();
      if (!needless(candidate) && !cheapest.containsKey(sizeIn) && passes(candidate)) {
        cheapest.put(sizeIn, candidate.cents());
      }
    }
    return Optional.of(cheapest);
  }

  /**
   * Every line without a section to spare that keeps the rules of the trade.
   *
   * @param mostLines how many lines to look at the most
   * @return empty when there are more
   */
  public Optional<List<Assembly>> every(int mostLines) {
    lookAtEveryLine(mostLines);
    return lines > mostLines
        ? Optional.empty()
        : Optional.of(
            candidates.stream()
                .filter(candidate -> !candidate.spare() && keeps(candidate))
                .map(Candidate::line)
                .toList());
  }

  /** The cost in cents of the line to offer, whatever its size; after {@link #cheapestBySize}. */
  Optional<Long> cheapest() {
    return candidates.stream()
        .filter(candidate -> !needless(candidate) && passes(candidate))
        .findFirst()
        .map(Candidate::cents);
  }

  /**
   * A section that could be left out never helps a line with nothing in its midst on even ground.
   * With stations, a wye or a rise it may, by a hair: the rise is spread over more hose, so what
   * stands there stands higher or lower, and a weak section lies higher. Nobody is sold a section
   * for that.
   */
  private boolean needless(Candidate candidate) {
    return candidate.spare()
        && (!job.stationsFt().isEmpty()
            || job.attack().isPresent()
            || job.run().riseFt() != 0
            || job.run().way().route().isPresent());
  }

  /**
   * The least cost in cents of a line that passes every check, has no section to spare or odd one
   * and buys other goods than some plan.
   *
   * @param bought what that plan buys, by item number
   */
  Optional<Long> cheapestButFor(Map<String, Integer> bought) {
    return candidates.stream()
        .filter(candidate -> !candidate.spare() && !candidate.odd())
        .filter(candidate -> !candidate.bought().equals(bought))
        .sorted(BEST_FIRST)
        .filter(this::passes)
        .map(Candidate::cents)
        .findFirst();
  }

  /** Counts the lines of every topology before the first is made: a shop of too many is left. */
  private void lookAtEveryLine(int mostLines) {
    List<Open> topologies = new ArrayList<>();
    for (Topology topology : new PlainTopologies(job, catalogue, prices).all()) {
      Open open = open(topology);
      lines += open.lines();
      if (lines > mostLines) {
        return;
      }
      topologies.add(open);
    }
    // Where some gap cannot be closed there is no line, however many chains lie over the others.
    topologies.stream().filter(open -> open.lines() > 0).forEach(this::addLines);
  }

  /**
   * What the lines that pass ask for in cents, tenths of a psi, lb and sections, without those that
   * another betters or equals in everything.
   *
   * @param mostLines how many lines to look at the most
   * @return empty when there are more
   */
  Optional<Set<TradeOff>> undominated(int mostLines) {
    lookAtEveryLine(mostLines);
    if (lines > mostLines) {
      return Optional.empty();
    }
    List<TradeOff> all =
        candidates.stream()
            .filter(candidate -> !needless(candidate))
            .filter(this::passes)
            .map(this::tradeOff)
            .toList();
    Set<TradeOff> undominated = new HashSet<>();
    for (TradeOff one : all) {
      if (all.stream().noneMatch(other -> dominates(other, one))) {
        undominated.add(one);
      }
    }
    return Optional.of(undominated);
  }

  private TradeOff tradeOff(Candidate candidate) {
    Hydraulics hydraulics = PlanHydraulics.of(job, candidate.line());
    int sections = 0;
    for (Placed part : candidate.line().parts()) {
      sections += part.role() == Role.HOSE ? part.count() * part.lines() : 0;
    }
    return new TradeOff(
        candidate.cents(),
        Math.round(10 * hydraulics.requiredSourcePsi()),
        Math.round(hydraulics.chargedWeightLb()),
        sections);
  }

  static boolean dominates(TradeOff one, TradeOff other) {
    return !one.equals(other)
        && one.cents() <= other.cents()
        && one.tenthsPsi() <= other.tenthsPsi()
        && one.chargedLb() <= other.chargedLb()
        && one.sections() <= other.sections();
  }

  private boolean passes(Candidate candidate) {
    return keeps(candidate) && failed(candidate).isEmpty();
  }

  private boolean keeps(Candidate candidate) {
    return practice.keeps(candidate.line(), candidate.purchases());
  }

  /** The checks that fail, but for those that are judged here. */
  private List<Check> failed(Candidate candidate) {
    return failed.computeIfAbsent(candidate, this::judged);
  }

  private List<Check> judged(Candidate candidate) {
    Hydraulics hydraulics = PlanHydraulics.of(job, candidate.line());
    return Checks.of(job, candidate.line(), hydraulics, candidate.purchases()).stream()
        .filter(check -> !OF_THE_TRADE.contains(check.id()))
        .filter(check -> check.outcome() == Outcome.FAIL)
        .toList();
  }

  /**
   * How far the nearest line is from passing, of those that keep every rule of the trade and could
   * be bought; empty where none does. After {@link #cheapestBySize}.
   */
  Optional<Shortfall> nearest() {
    return candidates.stream()
        .filter(candidate -> !needless(candidate) && keeps(candidate))
        .map(this::failed)
        .filter(failed -> failed.stream().map(Check::id).noneMatch(NOT_TO_BE_HAD::contains))
        .map(failed -> failed.stream().filter(check -> !check.id().isOfTheJob()).toList())
        .map(Shortfall::of)
        .filter(shortfall -> shortfall.rules() == 0)
        .min(Comparator.naturalOrder());
  }

  /** What may lie in a topology: every lay of each leg, every chain over each gap. */
  private record Open(
      Topology topology, List<List<Lay>> lays, List<List<List<Placed>>> overGaps, long lines) {}

  private Open open(Topology topology) {
    List<List<List<Placed>>> overGaps = new ArrayList<>();
    int outlets = job.network().outlets();
    End open = job.from();
    for (int i = 0; i < topology.before().size(); i++) {
      overGaps.add(chains(open, topology.before().get(i).upstream(), i == 0, false, outlets));
      open = topology.before().get(i).downstream();
    }
    boolean pipe = topology.before().isEmpty();
    for (LegShape leg : topology.legs()) {
      End inlet = leg.reversed() ? leg.hose().outlet() : leg.hose().inlet();
      End outlet = leg.reversed() ? leg.hose().inlet() : leg.hose().outlet();
      overGaps.add(chains(open, inlet, pipe, false, leg.lines()));
      for (LegShape.Midway midway : leg.midway()) {
        open = outlet;
        for (Bridge.Link valve : midway.parts()) {
          overGaps.add(chains(open, valve.upstream(), false, false, leg.lines()));
          open = valve.downstream();
        }
        overGaps.add(chains(open, inlet, false, false, leg.lines()));
      }
      open = outlet;
      pipe = false;
      int beside = leg.lines();
      for (Bridge.Link part : leg.after()) {
        overGaps.add(chains(open, part.upstream(), false, false, beside));
        open = part.downstream();
        beside = part.item().kind() == ItemKind.SIAMESE ? 1 : beside;
      }
    }
    int appliances = job.attack().isPresent() ? 2 : 1;
    overGaps.add(chains(open, job.to(), false, true, appliances));
    List<List<Lay>> lays = topology.legs().stream().map(plainLays::of).toList();
    long ways = 1;
    for (List<Lay> leg : lays) {
      ways *= leg.size();
    }
    return new Open(
        topology,
        lays,
        overGaps,
        overGaps.stream().mapToLong(List::size).reduce(ways, (a, b) -> a * b));
  }

  private void addLines(Open open) {
    for (Lay lay : open.lays().get(0)) {
      if (open.lays().size() == 1) {
        addLines(open.topology(), List.of(lay), open.overGaps(), new ArrayList<>());
      } else {
        for (Lay other : open.lays().get(1)) {
          addLines(open.topology(), List.of(lay, other), open.overGaps(), new ArrayList<>());
        }
      }
    }
  }

  private void addLines(
      Topology topology,
      List<Lay> lays,
      List<List<List<Placed>>> overGaps,
      List<List<Placed>> chosen) {
    if (chosen.size() == overGaps.size()) {
      Assembly line = Assembly.of(job, topology, lays, chosen);
      List<Basket.Purchase> purchases = bill.of(line);
      long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
      boolean spare = PlainLays.hasSpare(topology, lays);
      boolean odd = plainLays.hasOdd(topology, lays, prices);
      boolean last = practice.ranksLast(line, purchases);
      candidates.add(new Candidate(line, last, spare, odd, purchases, cents));
      return;
    }
    for (List<Placed> chain : overGaps.get(chosen.size())) {
      chosen.add(chain);
      addLines(topology, lays, overGaps, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  /** Every chain of up to three adapters that leads from one end to another. */
  private List<List<Placed>> chains(End from, End to, boolean fromPipe, boolean toPipe, int lines) {
    return chainsOver.computeIfAbsent(
        new Gap(from, to, fromPipe, toPipe, lines),
        gap -> search(from, to, fromPipe, toPipe, lines));
  }

  /** What a chain is to lead over. */
  private record Gap(End from, End to, boolean fromPipe, boolean toPipe, int lines) {}

  private List<List<Placed>> search(End from, End to, boolean fromPipe, boolean toPipe, int lines) {
    List<List<Placed>> chains = new ArrayList<>();
    if (joins(from, to, fromPipe || toPipe)) {
      chains.add(List.of());
    }
    extend(from, to, fromPipe, toPipe, lines, new ArrayList<>(), chains);
    return chains;
  }

  private void extend(
      End open,
      End to,
      boolean permanentHere,
      boolean toPipe,
      int lines,
      List<Placed> chain,
      List<List<Placed>> chains) {
    if (chain.size() == MOST_ADAPTERS) {
      return;
    }
    for (Item adapter : adapters) {
      for (int side = 0; side < 2; side++) {
        End upstream = adapter.ends().get(side);
        End downstream = adapter.ends().get(1 - side);
        if (joins(open, upstream, permanentHere)) {
          chain.add(Placed.adapter(new Bridge.Link(adapter, upstream, downstream), lines));
          if (joins(downstream, to, toPipe)) {
            chains.add(List.copyOf(chain));
          }
          extend(downstream, to, false, toPipe, lines, chain, chains);
          chain.remove(chain.size() - 1);
        }
      }
    }
  }

  /** By the mating law; two halves of one regional thread go by their name. */
  static boolean joins(End a, End b, boolean permanentAllowed) {
    Verdict verdict = Mating.of(a, b);
    if (verdict.outcome() == Verdict.Outcome.MEASURE) {
      return Mating.sameByName(a, b);
    }
    return verdict.mates() && (permanentAllowed || verdict.removable());
  }
}
