package hosewright.line.layout;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PumpFacts;
import hosewright.hydraulics.Boost;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.job.layout.BoosterWish;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.goods.Eligibility;
import hosewright.line.hose.HoseLines;
import hosewright.line.search.Shop;
import hosewright.line.water.FrictionChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Chooses how many pumps that are sold stand on the way of a leg, and where: the cheapest layout of
 * those with one size of hose and one pump, as few of them as feed it.
 *
 * <p>Fewer of one pump do only with hose that loses less, so each size is tried with each pump. The
 * pumps stand where each finds as much more than its intake must keep as the others; where that
 * does not do, as late as their intakes let them.
 */
public final class BoosterPlanner {
  private static final int MOST_PUMPS = 8;
  private static final int HALVINGS = 12;

  private final LayoutJob layout;
  private final Shop shop;
  private final LegJob leg;
  private final List<Item> pumps;

  /**
   * @param layout one of whose legs, that begins at the source, has pumps as needed
   */
  public BoosterPlanner(LayoutJob layout, Shop shop) {
    this.layout = layout;
    this.shop = shop;
    String name = layout.asNeeded().get(0);
    this.leg =
        layout.legs().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    Eligibility eligibility = new Eligibility(layout.whole(), shop.prices());
    this.pumps =
        shop.catalogue().ofKind(ItemKind.PUMP).stream()
            .filter(eligibility::wetted)
            .filter(item -> item.form().pump().isPresent())
            .filter(item -> boost(item).addsPsi() > 0)
            .toList();
  }

  /**
   * A way to set pumps.
   *
   * @param sizeIn of the leg's hose, in
   */
  private record Choice(double sizeIn, Item pump, List<Double> placesFt, double pumpsCost) {}

  /** A layout with the pumps that were set, and what it was found to be. */
  public record Boosted(LayoutJob layout, LayoutPlanner.Found found) {
    private boolean passes() {
      return found.best().filter(FedLayout::bestThatCanBe).isPresent();
    }
  }

  public Boosted find() {
    Boosted best = planned(layout);
    for (Choice choice : choices()) {
      if (best.passes() && choice.pumpsCost >= cost(best)) {
        break;
      }
      Boosted next = planned(boosted(choice));
      if (next.passes()
          && (!best.passes() || PricedLayout.BY_MERIT.compare(priced(next), priced(best)) < 0)) {
        best = next;
      }
    }
    return best;
  }

  private Boosted planned(LayoutJob so) {
    return new Boosted(so, new LayoutPlanner(so, shop).find());
  }

  private static PricedLayout priced(Boosted one) {
    return one.found.best().orElseThrow().priced();
  }

  private static double cost(Boosted one) {
    return priced(one).total().getAmount().doubleValue();
  }

  private LayoutJob boosted(Choice choice) {
    Job job = leg.job();
    LegJob ofSize =
        new LegJob(
            leg.name(),
            leg.behind(),
            leg.copies(),
            job.withWishes(job.wishes().ofSizes(List.of(choice.sizeIn))),
            leg.last());
    LayoutJob so =
        new LayoutJob(
            layout.legs().stream()
                .map(one -> one.name().equals(leg.name()) ? ofSize : one)
                .toList(),
            layout.pumps(),
            layout.boosters(),
            layout.asNeeded());
    return so.boosted(
        leg.name(),
        choice.placesFt.stream()
            .map(atFt -> new BoosterWish.Place(Optional.of(choice.pump.number()), atFt))
            .toList());
  }

  /** Every choice that friction lets do, those with the cheapest pumps first. */
  private List<Choice> choices() {
    Set<Choice> choices = new HashSet<>();
    Optional<Inlet> fed = layout.fed();
    if (fed.isEmpty() || leg.behind().isPresent()) {
      return List.of();
    }
    lossPerFt()
        .forEach(
            (sizeIn, perFt) -> {
              for (Item pump : pumps) {
                places(pump, perFt, fed.get())
                    .forEach(
                        placesFt ->
                            choices.add(
                                new Choice(sizeIn, pump, placesFt, price(pump, placesFt.size()))));
              }
            });
    return choices.stream()
        .sorted(
            Comparator.comparingDouble(Choice::pumpsCost)
                .thenComparing(choice -> choice.placesFt.toString())
                .thenComparing(choice -> choice.pump.number())
                .thenComparingDouble(Choice::sizeIn))
        .toList();
  }

  private double price(Item pump, int count) {
    return shop.prices()
        .unitPrice(pump, count)
        .map(each -> each.getAmount().doubleValue() * count)
        .orElse(0.0);
  }

  /** What each size of hose loses over a foot of ground with its rise, psi; the least of a size. */
  private TreeMap<Double, Double> lossPerFt() {
    Job job = leg.job();
    double risePsi = job.run().riseFt() / job.run().lengthFt() * Physical.PSI_PER_FT;
    TreeMap<Double, Double> perFt = new TreeMap<>();
    new HoseLines(job, shop.catalogue(), shop.prices())
        .all()
        .forEach(
            hose ->
                FrictionChoice.of(job, hose)
                    .coefficient()
                    .ifPresent(
                        c ->
                            perFt.merge(
                                hose.sizeIn(),
                                new CoefficientLaw(c).lossPsi(leg.flowGpm(), 1)
                                        * (1 + job.run().slack())
                                    + risePsi,
                                Math::min)));
    return perFt;
  }

  private Boost boost(Item pump) {
    PumpFacts facts = pump.form().pump().orElseThrow();
    PumpCurve curve =
        new PumpCurve(
            facts.curve().stream()
                .map(point -> new PumpCurve.Point(point.flowGpm(), point.psi()))
                .toList());
    return Boost.of(
        curve,
        leg.flowGpm(),
        RelayPump.LEAST_INTAKE_PSI + Limit.BOOSTER_SPARE_PSI.value(),
        pump.rating().workingPsi().orElse(Double.POSITIVE_INFINITY));
  }

  /** Where the fewest pumps stand: with like room above their intakes, and as late as may be. */
  private List<List<Double>> places(Item pump, double perFt, Inlet fed) {
    Boost boost = boost(pump);
    for (int count = 1; count <= MOST_PUMPS && perFt > 0; count++) {
      Optional<List<Double>> late = places(count, boost, perFt, fed, 0);
      if (late.isPresent()) {
        double lowPsi = 0;
        double highPsi = boost.addsPsi();
        for (int i = 0; i < HALVINGS; i++) {
          double middlePsi = (lowPsi + highPsi) / 2;
          if (places(count, boost, perFt, fed, middlePsi).isPresent()) {
            lowPsi = middlePsi;
          } else {
            highPsi = middlePsi;
          }
        }
        List<Double> even = places(count, boost, perFt, fed, lowPsi).orElseThrow();
        return even.equals(late.get()) ? List.of(even) : List.of(even, late.get());
      }
    }
    return List.of();
  }

  /**
   * Where so many pumps stand; empty where they do not feed the leg.
   *
   * @param roomPsi what each finds over what its intake must keep, and the end over its need, psi
   */
  private Optional<List<Double>> places(
      int count, Boost boost, double perFt, Inlet fed, double roomPsi) {
    double gridFt = Limit.BOOSTER_COUPLINGS_FT.value() / (1 + leg.job().run().slack());
    double lengthFt = leg.job().run().lengthFt();
    List<Double> places = new ArrayList<>();
    double atFt = 0;
    double psi = fed.flowingPsi();
    for (int i = 0; i < count; i++) {
      double reachFt = (psi - boost.leastIntakePsi() - roomPsi) / perFt;
      double nextFt = Math.floor((atFt + reachFt) / gridFt) * gridFt;
      if (nextFt <= atFt || nextFt >= lengthFt) {
        return Optional.empty();
      }
      psi = boost.outletPsi(psi - (nextFt - atFt) * perFt);
      atFt = nextFt;
      places.add(atFt);
    }
    double arrivesPsi = psi - (lengthFt - atFt) * perFt;
    return arrivesPsi >= leg.job().needPsi() + Limit.BOOSTER_SPARE_PSI.value() + roomPsi
        ? Optional.of(places)
        : Optional.empty();
  }
}
