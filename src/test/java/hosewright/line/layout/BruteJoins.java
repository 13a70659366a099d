package hosewright.line.layout;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Station;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Placed;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Goods;
import hosewright.line.layout.search.LaidLeg;
import hosewright.line.layout.search.Span;
import hosewright.line.model.Check;
import hosewright.line.model.Role;
import hosewright.line.search.BruteForce;
import hosewright.line.search.LegWays;
import hosewright.line.search.PlainBill;
import hosewright.line.search.SmallShop;
import hosewright.line.water.FittingLoss;
import hosewright.line.water.LegLevels;
import hosewright.line.water.PlanHydraulics;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lays two legs that meet before a third by looking at every layout there is: every siamese, with
 * every line of each leg that {@link BruteForce} finds.
 *
 * <p>It shares with the planner how a line is put together and checked; which lines there are, how
 * the flow divides, what the siamese takes, and what all costs it finds by itself.
 */
final class BruteJoins {
  /** A bore a twentieth under a nominal size counts as of that size. */
  private static final double OF_A_SIZE = 0.9499;

  private static final double PSI_PER_FT = 0.4331;

  private final LayoutJob layout;
  private final LegJob joined;
  private final LegJob third;
  private final SmallShop shop;
  private final PlainBill bill;
  private final List<Item> siameses;
  private final List<Candidate> candidates = new ArrayList<>();

  BruteJoins(LayoutJob layout, SmallShop shop) {
    this.layout = layout;
    this.joined = layout.legs().get(0);
    this.third = layout.legs().get(1);
    this.shop = shop;
    NetPrice prices = shop.catalogue().listPricesOn(SmallShop.DATE);
    this.bill = new PlainBill(layout.whole(), shop.catalogue(), prices);
    this.siameses =
        shop.catalogue().ofKind(ItemKind.SIAMESE).stream()
            .filter(new Eligibility(layout.whole(), prices)::wetted)
            .filter(item -> item.ends().size() == 3)
            .toList();
  }

  private record Candidate(
      Item siamese, List<Assembly> lines, List<Basket.Purchase> purchases, long cents) {}

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
    for (Item siamese : siameses) {
      // The small shops' siameses have like inlets, and the outlet last.
      List<List<Assembly>> lines = new ArrayList<>();
      for (LegJob leg : joined.joined()) {
        lines.add(
            lines(new Span(leg, layout.whole().from(), siamese.ends().get(0)), true, mostLayouts));
      }
      lines.add(
          lines(new Span(third, siamese.ends().get(2), third.job().to()), false, mostLayouts));
      long all = lines.stream().mapToLong(List::size).reduce(1, (a, b) -> a * b);
      if (candidates.size() + all > mostLayouts || lines.contains(TOO_MANY)) {
        return Optional.empty();
      }
      if (!forbidden(siamese)) {
        join(siamese, lines);
      }
    }
    candidates.sort(Comparator.comparingLong(Candidate::cents));
    return Optional.of(candidates.stream().filter(this::passes).findFirst().map(Candidate::cents));
  }

  private static final List<Assembly> TOO_MANY = new ArrayList<>();

  private List<Assembly> lines(Span span, boolean before, int most) {
    Job job = span.job();
    Optional<List<Assembly>> every = new BruteForce(job, shop).every(most);
    return every.isEmpty()
        ? TOO_MANY
        : every.get().stream().filter(line -> wideAtSiamese(line, job, before)).toList();
  }

  /** Between hose and siamese nothing is narrower than the hose. */
  private static boolean wideAtSiamese(Assembly line, Job job, boolean before) {
    if (lifted(job, "narrow-fitting")) {
      return true;
    }
    List<Placed> parts = new ArrayList<>(line.parts());
    if (before) {
      Collections.reverse(parts);
    }
    int hose = 0;
    while (parts.get(hose).role() != Role.HOSE) {
      hose++;
    }
    Placed beside = parts.get(hose);
    End met = (before ? beside.downstream() : beside.upstream()).orElseThrow();
    double leastIn = met.sizeIn() * OF_A_SIZE;
    double portIn = before ? job.to().sizeIn() : job.from().sizeIn();
    return portIn >= leastIn
        && parts.subList(1, hose).stream().allMatch(part -> bore(part) >= leastIn);
  }

  private static double bore(Placed part) {
    double endIn =
        Math.min(part.upstream().orElseThrow().sizeIn(), part.downstream().orElseThrow().sizeIn());
    return part.item()
        .map(item -> Math.min(endIn, item.water().waterwayIn().orElse(endIn)))
        .orElse(endIn);
  }

  private static boolean lifted(Job job, String rule) {
    return job.conditions().allowed().stream().map(Practice::id).anyMatch(rule::equals);
  }

  private static Placed part(Item siamese) {
    return Placed.inLine(new Bridge.Link(siamese, siamese.ends().get(0), siamese.ends().get(2)), 1);
  }

  /** Whether its ports are run far too fast, half of the flow in each inlet. */
  private boolean forbidden(Item siamese) {
    Placed part = part(siamese);
    double most = Practice.named("fitting-velocity").limit().orElseThrow();
    double outletIn = part.portIn(siamese.ends().get(2));
    double inletIn = part.portIn(siamese.ends().get(0));
    boolean fast =
        0.40853 * third.flowGpm() / (outletIn * outletIn) > most
            || 0.40853 * third.flowGpm() / 2 / (inletIn * inletIn) > most;
    return fast && !lifted(layout.whole(), "fitting-velocity");
  }

  private void join(Item siamese, List<List<Assembly>> lines) {
    for (Assembly left : lines.get(0)) {
      for (Assembly right : lines.get(1)) {
        for (Assembly last : lines.get(2)) {
          List<Assembly> legs = List.of(left, right, last);
          List<Basket.Purchase> purchases = bill.of(siamese, legs, 2);
          long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
          candidates.add(new Candidate(siamese, legs, purchases, cents));
        }
      }
    }
  }

  private boolean passes(Candidate one) {
    Job last = new Span(third, one.siamese.ends().get(2), third.job().to()).job();
    double joinPsi =
        FittingLoss.of(part(one.siamese)).lossPsi(third.flowGpm())
            + needsPsi(last, one.lines.get(2), last.needPsi());
    List<Job> jobs = jobs(one);
    double needPsi = 0;
    double lostPsi = 0;
    for (int i = 0; i < 2; i++) {
      needPsi = Math.max(needPsi, needsPsi(jobs.get(i), one.lines.get(i), joinPsi));
      lostPsi = Math.max(lostPsi, levels(jobs.get(i), one.lines.get(i)).lostPsi());
    }
    double atSourcePsi = Math.max(needPsi, joinPsi + lostPsi);
    Inlet source = layout.fed().orElse(new Inlet(atSourcePsi, atSourcePsi));
    double closedPsi = source.closedPsi() - joined.job().run().riseFt() * PSI_PER_FT;
    OptionalDouble siamesePsi =
        one.siamese.rating().workingPsiAt(last.service().temperatureOrUsualF());
    if (source.flowingPsi() < atSourcePsi - 1e-6
        || siamesePsi.isPresent() && siamesePsi.getAsDouble() < closedPsi - 1e-3) {
      return false;
    }
    double endsPsi = source.flowingPsi() - lostPsi;
    double takenPsi = joinPsi - needsPsi(last, one.lines.get(2), last.needPsi());
    Inlet behind = new Inlet(endsPsi - takenPsi, closedPsi);
    boolean holds = holds(one, 2, third, last, behind);
    for (int i = 0; i < 2; i++) {
      Job job = jobs.get(i).flowing(jobs.get(i).flowGpm(), joinPsi);
      holds = holds && holds(one, i, joined.joined().get(i), job, source);
    }
    return holds;
  }

  /** Each with its share: what flows in the first by halving, until both lose as much. */
  private List<Job> jobs(Candidate one) {
    List<Job> even = new ArrayList<>();
    for (LegJob leg : joined.joined()) {
      even.add(new Span(leg, layout.whole().from(), one.siamese.ends().get(0)).job());
    }
    List<LineElement> left = PlanHydraulics.elements(even.get(0), one.lines.get(0));
    List<LineElement> right = PlanHydraulics.elements(even.get(1), one.lines.get(1));
    double low = 0;
    double high = third.flowGpm();
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      double over =
          LineHydraulics.lossPsi(left, middle)
              - LineHydraulics.lossPsi(right, third.flowGpm() - middle);
      if (over > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return List.of(even.get(0).flowing(low, 0), even.get(1).flowing(third.flowGpm() - low, 0));
  }

  private static boolean holds(Candidate one, int place, LegJob leg, Job asked, Inlet fed) {
    Job job = asked.withSupply(Optional.of(fed));
    Assembly line = one.lines.get(place);
    LegWays.Way way = new LegWays.Way(line, Goods.NOTHING, 0, 0, levels(job, line));
    LaidLeg laid = new LaidLeg(leg, job, way, Optional.empty(), List.of(), job.needPsi());
    return new FedLeg(
            laid, job, PlanHydraulics.of(job, line), FedLeg.Begins.SOURCE, Optional.empty(), 0)
        .checks(one.purchases).stream()
            .filter(check -> !BruteForce.OF_THE_TRADE.contains(check.id()))
            .noneMatch(check -> check.outcome() == Check.Outcome.FAIL);
  }

  private static double needsPsi(Job job, Assembly line, double atEndPsi) {
    LegLevels levels = levels(job, line);
    return Math.max(atEndPsi + levels.lostPsi(), levels.peakPsi());
  }

  /** What the line takes, worked out from nothing at its beginning. */
  private static LegLevels levels(Job job, Assembly line) {
    List<Station> profile =
        LineHydraulics.profile(PlanHydraulics.elements(job, line), job.flowGpm(), 0, 0);
    double lowestPsi = profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    return new LegLevels(
        -profile.get(profile.size() - 1).flowingPsi(), -lowestPsi, Double.POSITIVE_INFINITY);
  }
}
