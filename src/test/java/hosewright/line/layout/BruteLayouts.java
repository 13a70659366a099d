package hosewright.line.layout;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.catalogue.Stated;
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
import hosewright.line.layout.search.Divider;
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
 * Lays two legs behind a third by looking at every layout there is: every wye either way round,
 * with every line of each leg that {@link BruteForce} finds.
 *
 * <p>It shares with the planner how a line is put together, fed and checked; which lines there are,
 * what legs take together and what it costs it finds by itself.
 */
final class BruteLayouts {
  /** A bore a twentieth under a nominal size counts as of that size. */
  private static final double OF_A_SIZE = 0.9499;

  private final LayoutJob layout;
  private final SmallShop shop;
  private final PlainBill bill;
  private final List<Item> wyes;
  private final List<Candidate> candidates = new ArrayList<>();

  BruteLayouts(LayoutJob layout, SmallShop shop) {
    this.layout = layout;
    this.shop = shop;
    NetPrice prices = shop.catalogue().listPricesOn(SmallShop.DATE);
    this.bill = new PlainBill(layout.whole(), shop.catalogue(), prices);
    this.wyes =
        shop.catalogue().ofKind(ItemKind.WYE).stream()
            .filter(new Eligibility(layout.whole(), prices)::wetted)
            .toList();
  }

  private record Candidate(
      Divider divider, List<Assembly> legs, List<Basket.Purchase> purchases, long cents) {}

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
    for (Item wye : wyes) {
      List<List<Assembly>> lines = new ArrayList<>();
      lines.add(lines(0, layout.whole().from(), wye.ends().get(0), mostLayouts));
      for (int leg = 1; leg <= 2; leg++) {
        // The small shops' wyes have like outlets.
        End to = layout.legs().get(leg).job().to();
        lines.add(lines(leg, wye.ends().get(leg), to, mostLayouts));
      }
      long all = lines.stream().mapToLong(List::size).reduce(1, (a, b) -> a * b);
      if (candidates.size() + all > mostLayouts || lines.contains(TOO_MANY)) {
        return Optional.empty();
      }
      if (!forbidden(wye)) {
        join(wye, lines);
      }
    }
    candidates.sort(Comparator.comparingLong(Candidate::cents));
    return Optional.of(candidates.stream().filter(this::passes).findFirst().map(Candidate::cents));
  }

  private static final List<Assembly> TOO_MANY = new ArrayList<>();

  private List<Assembly> lines(int leg, End from, End to, int most) {
    Job job = job(leg, from, to);
    Optional<List<Assembly>> every = new BruteForce(job, shop).every(most);
    return every.isEmpty()
        ? TOO_MANY
        : every.get().stream().filter(line -> wideAtWye(line, job, leg == 0)).toList();
  }

  private Job job(int leg, End from, End to) {
    return new Span(layout.legs().get(leg), from, to).job();
  }

  /** Between hose and wye nothing is narrower than the hose. */
  private static boolean wideAtWye(Assembly line, Job job, boolean before) {
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

  /** Whether its ports are run far too fast. */
  private boolean forbidden(Item wye) {
    List<LegJob> legs = layout.legs();
    Divider divider = divider(wye);
    double most = Practice.named("fitting-velocity").limit().orElseThrow();
    boolean any = lifted(layout.whole(), "fitting-velocity");
    boolean fast = speed(legs.get(0).flowGpm(), divider.towards(0).portIn(divider.inlet())) > most;
    for (int leg = 1; leg <= 2; leg++) {
      Placed part = divider.towards(leg - 1);
      fast |= speed(legs.get(leg).flowGpm(), part.portIn(divider.outlets().get(leg - 1))) > most;
    }
    return fast && !any;
  }

  /** ft/s; 0.4085 gpm over the square of inches (common practice, no source). */
  private static double speed(double gpm, double boreIn) {
    return 0.40853 * gpm / (boreIn * boreIn);
  }

  private Divider divider(Item wye) {
    double wholeGpm = layout.legs().get(0).flowGpm();
    List<End> outlets = wye.ends().subList(1, 3);
    List<Double> lossesPsi = new ArrayList<>();
    for (int leg = 0; leg < 2; leg++) {
      Placed part = Placed.inLine(new Bridge.Link(wye, wye.ends().get(0), outlets.get(leg)), 1);
      double likeGpm = layout.legs().get(leg + 1).flowGpm() * part.branches();
      LineElement loss = FittingLoss.of(part);
      lossesPsi.add(Math.max(loss.lossPsi(wholeGpm), loss.lossPsi(likeGpm)));
    }
    return new Divider(wye, wye.ends().get(0), outlets, lossesPsi);
  }

  private void join(Item wye, List<List<Assembly>> lines) {
    for (Assembly first : lines.get(0)) {
      for (Assembly left : lines.get(1)) {
        for (Assembly right : lines.get(2)) {
          List<Assembly> legs = List.of(first, left, right);
          List<Basket.Purchase> purchases = bill.of(wye, legs);
          long cents = purchases.stream().mapToLong(PlainBill::cents).sum();
          candidates.add(new Candidate(divider(wye), legs, purchases, cents));
        }
      }
    }
  }

  private boolean passes(Candidate one) {
    LaidLeg left = last(1, one);
    LaidLeg right = last(2, one);
    double leftPsi = left.needsPsi() + one.divider.lossPsi(0);
    double rightPsi = right.needsPsi() + one.divider.lossPsi(1);
    double needPsi = Math.max(leftPsi, rightPsi);
    LegJob asked = layout.legs().get(0);
    Job job = job(0, layout.whole().from(), one.divider.inlet()).flowing(asked.flowGpm(), needPsi);
    LaidLeg first =
        new LaidLeg(
            asked,
            job,
            way(job, one.legs.get(0)),
            Optional.of(one.divider),
            List.of(left, right),
            needPsi);
    double atSourcePsi = first.needsPsi();
    Inlet source = layout.fed().orElse(new Inlet(atSourcePsi, atSourcePsi));
    double closedPsi = source.closedPsi() - asked.job().run().riseFt() * 0.4331;
    OptionalDouble wyePsi =
        one.divider.item().orElseThrow().rating().workingPsiAt(job.service().temperatureOrUsualF());
    return source.flowingPsi() >= atSourcePsi - 1e-6
        && (wyePsi.isEmpty() || wyePsi.getAsDouble() >= closedPsi - 1e-3)
        && FedLeg.of(List.of(first), source).stream()
            .flatMap(leg -> leg.checks(one.purchases).stream())
            .filter(check -> !BruteForce.OF_THE_TRADE.contains(check.id()))
            .noneMatch(BruteLayouts::fails)
        && !plainWye(one);
  }

  private static boolean fails(Check check) {
    return check.outcome() == Check.Outcome.FAIL;
  }

  private boolean plainWye(Candidate one) {
    return !lifted(layout.whole(), "plain-wye")
        && layout.whole().service().use().isFire()
        && one.divider.item().orElseThrow().form().gated() == Stated.NO;
  }

  private LaidLeg last(int leg, Candidate one) {
    LegJob asked = layout.legs().get(leg);
    Job job = job(leg, one.divider.outlets().get(leg - 1), asked.job().to());
    return new LaidLeg(
        asked, job, way(job, one.legs.get(leg)), Optional.empty(), List.of(), job.needPsi());
  }

  /** What the line takes, worked out from nothing at its beginning. */
  private static LegWays.Way way(Job job, Assembly line) {
    List<Station> profile =
        LineHydraulics.profile(PlanHydraulics.elements(job, line), job.flowGpm(), 0, 0);
    double lowestPsi = profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    double lostPsi = -profile.get(profile.size() - 1).flowingPsi();
    LegLevels levels = new LegLevels(lostPsi, -lowestPsi, Double.POSITIVE_INFINITY);
    return new LegWays.Way(line, Goods.NOTHING, 0, 0, levels);
  }
}
