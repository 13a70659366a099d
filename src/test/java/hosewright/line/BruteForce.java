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

  private record Candidate(Assembly line, List<Basket.Purchase> purchases, long cents) {}

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

  private void lookAtEveryLine(int mostLines) {
    for (HoseLine hose : new HoseLines(job, catalogue, prices).all()) {
      for (List<Bridge.Link> atSource : devices(false)) {
        for (List<Bridge.Link> atAppliance : devices(true)) {
          for (boolean reversed : new boolean[] {false, true}) {
            frames(hose, reversed, atSource, atAppliance)
                .forEach(frame -> addLines(frame, mostLines));
          }
        }
      }
    }
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
  private List<List<Bridge.Link>> devices(boolean atAppliance) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String asked : job.accessories()) {
      if (asked.endsWith(" at appliance") != atAppliance) {
        continue;
      }
      String wanted = asked.replace(" at appliance", "");
      List<Item> valves =
          wanted.equals("valve")
              ? usable(ItemKind.VALVE)
              : catalogue.item(wanted).filter(i -> i.kind() == ItemKind.VALVE).stream().toList();
      if (!valves.isEmpty()) {
        List<List<Bridge.Link>> more = new ArrayList<>();
        for (List<Bridge.Link> before : chosen) {
          for (Item valve : valves) {
            Bridge.Link link = new Bridge.Link(valve, valve.ends().get(0), valve.ends().get(1));
            more.add(Stream.concat(before.stream(), Stream.of(link)).toList());
          }
        }
        chosen = more;
      }
    }
    return chosen;
  }

  /** The small shops have wyes and siameses for two lines: their like ends are known by place. */
  private List<Frame> frames(
      HoseLine hose, boolean reversed, List<Bridge.Link> atSource, List<Bridge.Link> atAppliance) {
    if (job.wishes().lines().orElse(1) == 1) {
      return List.of(new Frame(hose, reversed, 1, atSource, atAppliance));
    }
    List<Frame> frames = new ArrayList<>();
    for (Item wye : usable(ItemKind.WYE)) {
      for (Item siamese : usable(ItemKind.SIAMESE)) {
        List<Bridge.Link> before = new ArrayList<>(atSource);
        before.add(new Bridge.Link(wye, wye.ends().get(0), wye.ends().get(1)));
        List<Bridge.Link> after = new ArrayList<>();
        after.add(new Bridge.Link(siamese, siamese.ends().get(0), siamese.ends().get(2)));
        after.addAll(atAppliance);
        frames.add(new Frame(hose, reversed, 2, before, after));
      }
    }
    return frames;
  }

  private List<Item> usable(ItemKind kind) {
    return catalogue.ofKind(kind).stream().filter(eligibility::wetted).toList();
  }

  private void addLines(Frame frame, int mostLines) {
    List<List<List<Placed>>> overGaps = new ArrayList<>();
    End open = job.from();
    for (int i = 0; i < frame.before().size(); i++) {
      overGaps.add(chains(open, frame.before().get(i).upstream(), i == 0, false, 1));
      open = frame.before().get(i).downstream();
    }
    HoseLine hose = frame.hose();
    End inlet = frame.reversed() ? hose.outlet() : hose.inlet();
    End outlet = frame.reversed() ? hose.inlet() : hose.outlet();
    overGaps.add(chains(open, inlet, frame.before().isEmpty(), false, frame.lines()));
    End left = outlet;
    for (int i = 0; i < frame.after().size(); i++) {
      Bridge.Link part = frame.after().get(i);
      overGaps.add(chains(left, part.upstream(), false, false, i == 0 ? frame.lines() : 1));
      left = part.downstream();
    }
    overGaps.add(chains(left, job.to(), false, true, 1));
    boolean couples = joins(outlet, inlet, false);
    List<Lay> lays = new ArrayList<>(lays(hose));
    lays.removeIf(lay -> !couples && lay.sections() > 1);
    lines += overGaps.stream().mapToLong(List::size).reduce(lays.size(), (a, b) -> a * b);
    if (lines <= mostLines) {
      lays.forEach(lay -> addLines(frame, lay, overGaps, new ArrayList<>()));
    }
  }

  private void addLines(
      Frame frame, Lay lay, List<List<List<Placed>>> overGaps, List<List<Placed>> chosen) {
    if (chosen.size() == overGaps.size()) {
      Assembly line = Assembly.of(job, frame, lay, chosen);
      List<Basket.Purchase> purchases = bill.of(line);
      long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
      candidates.add(new Candidate(line, purchases, cents));
      return;
    }
    for (List<Placed> chain : overGaps.get(chosen.size())) {
      chosen.add(chain);
      addLines(frame, lay, overGaps, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  /** Every choice of sections that covers the run and has one section to spare at the most. */
  private List<Lay> lays(HoseLine hose) {
    double neededFt = job.run().neededFt();
    double shortestFt =
        hose.options().stream().mapToDouble(SectionOption::lengthFt).min().orElseThrow();
    List<Lay> lays = new ArrayList<>();
    addLays(hose, (int) Math.ceil(neededFt / shortestFt) + 1, new ArrayList<>(), lays);
    lays.removeIf(lay -> lay.lengthFt() < neededFt - 1e-9 || spares(hose, lay, neededFt) > 1);
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
