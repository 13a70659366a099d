package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.line.LinePlan.Check.Outcome;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Plans a job by looking at every line there is: every hose, both ways round, every lay with up to
 * one section to spare, every chain of adapters over every gap.
 *
 * <p>It leaves nothing out for its price or its pressure, so it is slow and plain. It shares with
 * the planner how hose is grouped, how a line is put together and checked, and the mating law; it
 * chains adapters, counts gaskets and prices ({@link PlainBill}) by itself.
 */
final class BruteForce {
  private static final int MOST_ADAPTERS = 3;

  private final Job job;
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final Eligibility eligibility;
  private final PlainBill bill;
  private final List<Item> adapters;
  private final List<Candidate> candidates = new ArrayList<>();
  private long lines;

  BruteForce(Job job, Catalogue catalogue, NetPrice prices) {
    this.job = job;
    this.catalogue = catalogue;
    this.prices = prices;
    this.eligibility = new Eligibility(job, prices);
    this.bill = new PlainBill(job, catalogue, prices);
    this.adapters = usable(ItemKind.ADAPTER);
  }

  /**
   * @param spare whether a section could be left out
   */
  private record Candidate(
      Assembly line, boolean spare, List<Basket.Purchase> purchases, long cents) {
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
    candidates.sort(Comparator.comparingLong(Candidate::cents));
    Map<Double, Long> cheapest = new TreeMap<>();
    for (Candidate candidate : candidates) {
      double sizeIn = candidate.line().frame().hose().sizeIn();
      if (!cheapest.containsKey(sizeIn) && passes(candidate)) {
        cheapest.put(sizeIn, candidate.cents());
      }
    }
    return Optional.of(cheapest);
  }

  /**
   * The least cost in cents of a line that passes every check, has no section to spare and buys
   * other goods than some plan.
   *
   * @param bought what that plan buys, by item number
   */
  Optional<Long> cheapestButFor(Map<String, Integer> bought) {
    return candidates.stream()
        .filter(candidate -> !candidate.spare() && !candidate.bought().equals(bought))
        .sorted(Comparator.comparingLong(Candidate::cents))
        .filter(this::passes)
        .map(Candidate::cents)
        .findFirst();
  }

  private void lookAtEveryLine(int mostLines) {
    List<Frame> frames = new ArrayList<>();
    for (HoseLine hose : new HoseLines(job, catalogue, prices).all()) {
      for (List<Bridge.Link> atSource : devices(Asked::atSource)) {
        for (List<Leg.Midway> midway : midway()) {
          for (List<Bridge.Link> atAppliance : devices(Asked::atAppliance)) {
            for (boolean reversed : new boolean[] {false, true}) {
              addFrames(hose, reversed, atSource, midway, atAppliance, frames);
            }
          }
        }
      }
    }
    frames.forEach(frame -> addLines(frame, mostLines));
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
    List<TradeOff> all = candidates.stream().filter(this::passes).map(this::tradeOff).toList();
    Set<TradeOff> undominated = new HashSet<>();
    for (TradeOff one : all) {
      if (all.stream().noneMatch(other -> dominates(other, one))) {
        undominated.add(one);
      }
    }
    return Optional.of(undominated);
  }

  private TradeOff tradeOff(Candidate candidate) {
    LineHydraulicsResult hydraulics = PlanHydraulics.of(job, candidate.line());
    int sections = 0;
    for (Placed part : candidate.line().parts()) {
      sections += part.role() == Placed.Role.HOSE ? part.count() * part.lines() : 0;
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
    LineHydraulicsResult hydraulics = PlanHydraulics.of(job, candidate.line());
    return Checks.of(job, candidate.line(), hydraulics, candidate.purchases()).stream()
        .noneMatch(check -> check.outcome() == Outcome.FAIL);
  }

  /** Valves asked for by kind or number: each choice of them. */
  private List<List<Bridge.Link>> devices(Predicate<Asked> place) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String asked : job.accessories()) {
      if (!place.test(Asked.of(asked))) {
        continue;
      }
      String wanted = Asked.of(asked).what();
      List<Item> valves =
          wanted.equals("valve")
              ? usable(ItemKind.VALVE)
              : catalogue.item(wanted).filter(i -> i.kind() == ItemKind.VALVE).stream().toList();
      if (!valves.isEmpty()) {
        List<List<Bridge.Link>> more = new ArrayList<>();
        for (List<Bridge.Link> before : chosen) {
          for (Item valve : valves) {
            more.add(and(before, new Bridge.Link(valve, valve.ends().get(0), valve.ends().get(1))));
          }
        }
        chosen = more;
      }
    }
    return chosen;
  }

  /** Each choice of valves at the stations asked for. */
  private List<List<Leg.Midway>> midway() {
    List<List<Leg.Midway>> chosen = List.of(List.of());
    for (double stationFt : job.stationsFt()) {
      List<List<Leg.Midway>> more = new ArrayList<>();
      for (List<Leg.Midway> before : chosen) {
        for (List<Bridge.Link> parts : devices(asked -> asked.isAt(stationFt))) {
          more.add(and(before, new Leg.Midway(stationFt, parts)));
        }
      }
      chosen = more;
    }
    return chosen;
  }

  private static <T> List<T> and(List<T> before, T last) {
    return Stream.concat(before.stream(), Stream.of(last)).toList();
  }

  /** The small shops have wyes and siameses for two lines: their like ends are known by place. */
  private void addFrames(
      HoseLine hose,
      boolean reversed,
      List<Bridge.Link> atSource,
      List<Leg.Midway> midway,
      List<Bridge.Link> atAppliance,
      List<Frame> frames) {
    double neededFt = job.run().neededFt();
    if (job.attack().isPresent()) {
      Job.Attack attack = job.attack().get();
      Job ofAttack = job.withWishes(job.wishes().ofSizes(attack.hoseSizesIn()));
      double attackFt = attack.lengthFt() * (1 + job.run().slack());
      for (Item wye : usable(ItemKind.WYE)) {
        Leg supply = new Leg(hose, reversed, 1, neededFt, midway, List.of(asWye(wye)), 1);
        for (HoseLine other : new HoseLines(ofAttack, catalogue, prices).all()) {
          for (boolean turned : new boolean[] {false, true}) {
            Leg branch = new Leg(other, turned, 2, attackFt, List.of(), atAppliance, 2);
            frames.add(new Frame(1, atSource, List.of(supply, branch)));
          }
        }
      }
      return;
    }
    if (job.wishes().lines().orElse(1) == 1) {
      Leg leg = new Leg(hose, reversed, 1, neededFt, midway, atAppliance, 1);
      frames.add(new Frame(1, atSource, List.of(leg)));
      return;
    }
    for (Item siamese : usable(ItemKind.SIAMESE)) {
      List<Bridge.Link> after = new ArrayList<>();
      after.add(new Bridge.Link(siamese, siamese.ends().get(0), siamese.ends().get(2)));
      after.addAll(atAppliance);
      Leg leg = new Leg(hose, reversed, 2, neededFt, midway, after, 1);
      if (job.network().outlets() == 2) {
        frames.add(new Frame(2, atSource, List.of(leg)));
        continue;
      }
      for (Item wye : usable(ItemKind.WYE)) {
        frames.add(new Frame(1, and(atSource, asWye(wye)), List.of(leg)));
      }
    }
  }

  private static Bridge.Link asWye(Item wye) {
    return new Bridge.Link(wye, wye.ends().get(0), wye.ends().get(1));
  }

  private List<Item> usable(ItemKind kind) {
    return catalogue.ofKind(kind).stream().filter(eligibility::wetted).toList();
  }

  private void addLines(Frame frame, int mostLines) {
    List<List<List<Placed>>> overGaps = new ArrayList<>();
    int outlets = job.network().outlets();
    End open = job.from();
    for (int i = 0; i < frame.before().size(); i++) {
      overGaps.add(chains(open, frame.before().get(i).upstream(), i == 0, false, outlets));
      open = frame.before().get(i).downstream();
    }
    boolean pipe = frame.before().isEmpty();
    for (Leg leg : frame.legs()) {
      End inlet = leg.reversed() ? leg.hose().outlet() : leg.hose().inlet();
      End outlet = leg.reversed() ? leg.hose().inlet() : leg.hose().outlet();
      overGaps.add(chains(open, inlet, pipe, false, leg.lines()));
      for (Leg.Midway midway : leg.midway()) {
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
    List<List<Lay>> lays = frame.legs().stream().map(this::laysThatCouple).toList();
    long ways = 1;
    for (List<Lay> leg : lays) {
      ways *= leg.size();
    }
    lines += overGaps.stream().mapToLong(List::size).reduce(ways, (a, b) -> a * b);
    if (lines <= mostLines) {
      for (Lay lay : lays.get(0)) {
        if (lays.size() == 1) {
          addLines(frame, List.of(lay), overGaps, new ArrayList<>());
        } else {
          for (Lay other : lays.get(1)) {
            addLines(frame, List.of(lay, other), overGaps, new ArrayList<>());
          }
        }
      }
    }
  }

  private void addLines(
      Frame frame, List<Lay> lays, List<List<List<Placed>>> overGaps, List<List<Placed>> chosen) {
    if (chosen.size() == overGaps.size()) {
      Assembly line = Assembly.of(job, frame, lays, chosen);
      List<Basket.Purchase> purchases = bill.of(line);
      long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
      candidates.add(new Candidate(line, hasSpare(frame, lays), purchases, cents));
      return;
    }
    for (List<Placed> chain : overGaps.get(chosen.size())) {
      chosen.add(chain);
      addLines(frame, lays, overGaps, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  private static boolean hasSpare(Frame frame, List<Lay> lays) {
    boolean spare = false;
    for (int i = 0; i < lays.size(); i++) {
      Leg leg = frame.legs().get(i);
      boolean more = lays.get(i).sections() > leg.midway().size() + 1;
      spare |= more && spares(leg.hose(), lays.get(i), leg.neededFt()) > 0;
    }
    return spare;
  }

  private List<Lay> laysThatCouple(Leg leg) {
    End inlet = leg.hose().inlet();
    boolean couples = joins(leg.hose().outlet(), inlet, false);
    List<Lay> lays = new ArrayList<>(lays(leg));
    lays.removeIf(lay -> !couples && lay.sections() > 1);
    return lays;
  }

  /**
   * Every choice of sections that covers the run, gives each station a coupling, and has one
   * section to spare at the most.
   */
  private List<Lay> lays(Leg leg) {
    HoseLine hose = leg.hose();
    double neededFt = leg.neededFt();
    double shortestFt =
        hose.options().stream().mapToDouble(SectionOption::lengthFt).min().orElseThrow();
    List<Lay> lays = new ArrayList<>();
    int most = Math.max((int) Math.ceil(neededFt / shortestFt), leg.midway().size()) + 1;
    addLays(hose, most, new ArrayList<>(), lays);
    lays.removeIf(
        lay ->
            lay.lengthFt() < neededFt - 1e-9
                || lay.sections() <= leg.midway().size()
                || spares(hose, lay, neededFt) > Math.max(1, leg.midway().size()));
    lays.removeIf(lay -> !enoughOwned(hose, lay));
    return lays;
  }

  /** Whether the buyer owns as many as are laid of what is not bought. */
  private boolean enoughOwned(HoseLine hose, Lay lay) {
    for (int i = 0; i < hose.options().size(); i++) {
      int laid = lay.counts().get(i) * job.wishes().lines().orElse(1);
      if (hose.options().get(i).owned().map(owned -> laid > owned.count()).orElse(false)) {
        return false;
      }
    }
    return true;
  }

  /** How many sections could be left out. */
  private static int spares(HoseLine hose, Lay lay, double neededFt) {
    List<Double> laidFt = new ArrayList<>();
    for (int i = 0; i < hose.options().size(); i++) {
      for (int section = 0; section < lay.counts().get(i); section++) {
        laidFt.add(hose.options().get(i).lengthFt());
      }
    }
    laidFt.sort(Comparator.naturalOrder());
    double leftFt = lay.lengthFt();
    int spared = 0;
    while (leftFt - laidFt.get(spared) >= neededFt - 1e-9) {
      leftFt -= laidFt.get(spared++);
    }
    return spared;
  }

  private static void addLays(HoseLine hose, int most, List<Integer> counts, List<Lay> lays) {
    int option = counts.size();
    if (option == hose.options().size()) {
      double lengthFt = 0;
      for (int i = 0; i < option; i++) {
        lengthFt += counts.get(i) * hose.options().get(i).lengthFt();
      }
      lays.add(new Lay(List.copyOf(counts), lengthFt));
      return;
    }
    for (int count = 0; count <= most; count++) {
      counts.add(count);
      addLays(hose, most - count, counts, lays);
      counts.remove(option);
    }
  }

  /** Every chain of up to three adapters that leads from one end to another. */
  private List<List<Placed>> chains(End from, End to, boolean fromPipe, boolean toPipe, int lines) {
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
  private static boolean joins(End a, End b, boolean permanentAllowed) {
    Verdict verdict = Mating.of(a, b);
    if (verdict.outcome() == Verdict.Outcome.MEASURE) {
      return Mating.sameByName(a, b);
    }
    return verdict.mates() && (permanentAllowed || verdict.removable());
  }
}
