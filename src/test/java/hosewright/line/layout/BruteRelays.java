package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Station;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LayoutPump;
import hosewright.job.layout.LegJob;
import hosewright.line.assembly.Assembly;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Goods;
import hosewright.line.layout.search.LaidLeg;
import hosewright.line.layout.search.Span;
import hosewright.line.model.Check;
import hosewright.line.search.BruteForce;
import hosewright.line.search.LegWays;
import hosewright.line.search.PlainBill;
import hosewright.line.search.SmallShop;
import hosewright.line.water.LegLevels;
import hosewright.line.water.PlanHydraulics;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * Lays one or two legs behind a buyer's pump, and one before it, by looking at every layout there
 * is: every discharge, with every line of each leg that {@link BruteForce} finds.
 *
 * <p>It shares with the planner how a line is put together and checked; which lines there are, what
 * the pump does to pressure, and what all costs it finds by itself.
 */
final class BruteRelays {
  private static final double PSI_PER_FT = 0.4331;

  private final LayoutJob layout;
  private final LayoutPump pump;
  private final SmallShop shop;
  private final PlainBill bill;
  private final List<Candidate> candidates = new ArrayList<>();

  BruteRelays(LayoutJob layout, SmallShop shop) {
    this.layout = layout;
    this.pump = layout.pumpBehind(layout.legs().get(0)).orElseThrow();
    this.shop = shop;
    this.bill =
        new PlainBill(
            layout.whole(), shop.catalogue(), shop.catalogue().listPricesOn(SmallShop.DATE));
  }

  private record Candidate(
      List<Job> jobs, List<Assembly> lines, List<Basket.Purchase> purchases, long cents) {}

  /** How many layouts were looked at. */
  int looked() {
    return candidates.size();
  }

  /**
   * The least cost in cents of a layout that passes every check; empty inside where none does.
   *
   * @param mostLayouts how many to look at the most
   * @return empty when there are more
   */
  Optional<Optional<Long>> cheapest(int mostLayouts) {
    for (List<End> discharges : discharges()) {
      List<Job> jobs = new ArrayList<>();
      jobs.add(job(0, layout.whole().from(), pump.intake()));
      for (int leg = 1; leg < layout.legs().size(); leg++) {
        jobs.add(job(leg, discharges.get(leg - 1), layout.legs().get(leg).job().to()));
      }
      List<List<Assembly>> lines = new ArrayList<>();
      long all = 1;
      for (Job job : jobs) {
        Optional<List<Assembly>> every = new BruteForce(job, shop).every(mostLayouts);
        if (every.isEmpty()) {
          return Optional.empty();
        }
        lines.add(every.get());
        all *= every.get().size();
      }
      if (candidates.size() + all > mostLayouts) {
        return Optional.empty();
      }
      join(jobs, lines, new ArrayList<>());
    }
    candidates.sort(Comparator.comparingLong(Candidate::cents));
    return Optional.of(candidates.stream().filter(this::passes).findFirst().map(Candidate::cents));
  }

  /** Every way to choose a discharge for each leg behind the pump. */
  private Iterable<List<End>> discharges() {
    LinkedHashSet<List<End>> ways = new LinkedHashSet<>();
    List<End> ends = pump.discharges();
    for (int i = 0; i < ends.size(); i++) {
      if (layout.legs().size() == 2) {
        ways.add(List.of(ends.get(i)));
      }
      for (int k = 0; k < ends.size() && layout.legs().size() == 3; k++) {
        if (i != k) {
          ways.add(List.of(ends.get(i), ends.get(k)));
        }
      }
    }
    return ways;
  }

  private Job job(int leg, End from, End to) {
    return new Span(layout.legs().get(leg), from, to).job();
  }

  private void join(List<Job> jobs, List<List<Assembly>> lines, List<Assembly> chosen) {
    if (chosen.size() == lines.size()) {
      List<Basket.Purchase> purchases = bill.of(chosen);
      long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
      candidates.add(new Candidate(jobs, List.copyOf(chosen), purchases, cents));
      return;
    }
    for (Assembly line : lines.get(chosen.size())) {
      chosen.add(line);
      join(jobs, lines, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  private boolean passes(Candidate one) {
    double addsPsi = pump.curve().pressurePsi(one.jobs.get(0).flowGpm());
    double reliefPsi = pump.reliefPsi().orElse(1e9);
    double behindPsi = 0;
    for (int leg = 1; leg < one.lines.size(); leg++) {
      behindPsi = Math.max(behindPsi, needsPsi(one, leg, one.jobs.get(leg).needPsi()));
    }
    double intakePsi = Math.max(pump.leastIntakePsi(), behindPsi - addsPsi);
    double atSourcePsi = needsPsi(one, 0, intakePsi);
    Inlet source = layout.fed().orElse(new Inlet(atSourcePsi, atSourcePsi));
    if (behindPsi > reliefPsi + 1e-6 || source.flowingPsi() < atSourcePsi - 1e-6) {
      return false;
    }
    double endsPsi = source.flowingPsi() - levels(one, 0).lostPsi();
    double riseFt = layout.legs().get(0).job().run().riseFt();
    double closedPsi = source.closedPsi() - riseFt * PSI_PER_FT + pump.curve().closedPsi();
    Inlet behind =
        new Inlet(Math.min(endsPsi + addsPsi, reliefPsi), Math.min(closedPsi, reliefPsi));
    boolean holds =
        holds(one, 0, one.jobs.get(0).flowing(one.jobs.get(0).flowGpm(), intakePsi), source);
    for (int leg = 1; leg < one.lines.size(); leg++) {
      holds = holds && holds(one, leg, one.jobs.get(leg), behind);
    }
    return holds;
  }

  private boolean holds(Candidate one, int leg, Job asked, Inlet fed) {
    Job job = asked.withSupply(Optional.of(fed));
    Assembly line = one.lines.get(leg);
    LegJob named = layout.legs().get(leg);
    LegWays.Way way = new LegWays.Way(line, Goods.NOTHING, 0, 0, levels(one, leg));
    LaidLeg laid = new LaidLeg(named, job, way, Optional.empty(), List.of(), job.needPsi());
    return new FedLeg(
            laid, job, PlanHydraulics.of(job, line), FedLeg.Begins.SOURCE, Optional.empty(), 0)
        .checks(one.purchases).stream()
            .filter(check -> !BruteForce.OF_THE_TRADE.contains(check.id()))
            .noneMatch(check -> check.outcome() == Check.Outcome.FAIL);
  }

  private static double needsPsi(Candidate one, int leg, double atEndPsi) {
    LegLevels levels = levels(one, leg);
    return Math.max(atEndPsi + levels.lostPsi(), levels.peakPsi());
  }

  /** What the line takes, worked out from nothing at its beginning. */
  private static LegLevels levels(Candidate one, int leg) {
    Job job = one.jobs.get(leg);
    List<Station> profile =
        LineHydraulics.profile(
            PlanHydraulics.elements(job, one.lines.get(leg)), job.flowGpm(), 0, 0);
    double lowestPsi = profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    return new LegLevels(
        -profile.get(profile.size() - 1).flowingPsi(), -lowestPsi, Double.POSITIVE_INFINITY);
  }
}
