package hosewright.line.layout.search;

import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.network.Shares;
import hosewright.job.Job;
import hosewright.line.goods.Goods;
import hosewright.line.goods.SharedCosts;
import hosewright.line.search.LegWays;
import hosewright.line.search.LegWays.Abreast;
import hosewright.line.search.LegWays.Wanted;
import hosewright.line.search.LegWays.Way;
import hosewright.line.water.LegLevels;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * The ways to lay legs that part at one place and meet at another: every line of each beside every
 * line of the others, for how much flows in one is told by all of them.
 */
final class SideBySide implements Laying {
  private static final double HAIR = 1e-9;
  private static final int A_FEW = 8;

  private final Job job;
  private final List<LegWays> legs;
  private final SharedCosts costs;
  private final List<Kept> kept = new ArrayList<>();
  private final Map<Way, DoubleUnaryOperator> losses = new IdentityHashMap<>();
  private Wanted wanted = Wanted.ANY;
  private int looked;

  /**
   * @param job what is asked of all together
   * @param legs how each may be laid at any share of the flow
   * @param costs compares what all take together
   */
  SideBySide(Job job, List<LegWays> legs, SharedCosts costs) {
    this.job = job;
    this.legs = legs;
    this.costs = costs;
  }

  /** One that nothing met so far is as good as. */
  private record Kept(Way way, SharedCosts.Compared compared) {}

  @Override
  public int looked() {
    return looked + legs.stream().mapToInt(LegWays::looked).sum();
  }

  /** Friction is left out: how much of it there is no single leg tells. */
  @Override
  public double leastCost(double eachPsi) {
    double ofRise = eachPsi * job.run().riseFt() * Physical.PSI_PER_FT;
    return legs.stream().mapToDouble(leg -> leg.leastCost(0)).sum() + ofRise;
  }

  @Override
  public List<Way> all(Wanted which) {
    double leastOfAll = legs.stream().mapToDouble(leg -> leg.leastCost(0)).sum();
    double ofRise = which.eachPsi() * job.run().riseFt() * Physical.PSI_PER_FT;
    List<List<Way>> ofEach = new ArrayList<>();
    for (LegWays leg : legs) {
      double left = which.mostCost() - (leastOfAll - leg.leastCost(0)) - ofRise;
      List<Way> ways = new ArrayList<>(leg.all(new Wanted(left, which.mostToSource(), 0)));
      ways.sort(Comparator.comparingDouble(Way::leastCost));
      ofEach.add(ways);
    }
    return together(ofEach, which);
  }

  @Override
  public List<Way> few() {
    return together(legs.stream().map(leg -> few(leg.few())).toList(), Wanted.ANY);
  }

  private List<Way> few(List<Way> ways) {
    double eachGpm = job.flowGpm() / legs.size();
    Set<Way> few = new LinkedHashSet<>();
    ways.stream().sorted(Comparator.comparingDouble(Way::leastCost)).limit(A_FEW).forEach(few::add);
    ways.stream()
        .sorted(Comparator.comparingDouble(way -> loss(way).applyAsDouble(eachGpm)))
        .limit(A_FEW)
        .forEach(few::add);
    return List.copyOf(few);
  }

  private List<Way> together(List<List<Way>> ofEach, Wanted which) {
    kept.clear();
    losses.clear();
    wanted = which;
    double least = 0;
    for (List<Way> ways : ofEach) {
      if (ways.isEmpty()) {
        return List.of();
      }
      least += ways.stream().mapToDouble(Way::leastCost).min().orElseThrow();
    }
    add(ofEach, new ArrayList<>(), least);
    return kept.stream().map(Kept::way).toList();
  }

  /**
   * @param chosen of the first legs
   * @param least what those cost with the cheapest of all others
   */
  private void add(List<List<Way>> ofEach, List<Way> chosen, double least) {
    if (chosen.size() == ofEach.size()) {
      weigh(chosen);
      return;
    }
    List<Way> ways = ofEach.get(chosen.size());
    double cheapest = ways.stream().mapToDouble(Way::leastCost).min().orElseThrow();
    for (Way way : ways) {
      double so = least - cheapest + way.leastCost();
      if (so <= wanted.mostCost() + HAIR) {
        chosen.add(way);
        add(ofEach, chosen, so);
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  private void weigh(List<Way> chosen) {
    looked++;
    int toSource = chosen.stream().mapToInt(Way::toSource).sum();
    if (toSource > wanted.mostToSource()) {
      return;
    }
    double[] gpm = Shares.gpm(chosen.stream().map(this::loss).toList(), job.flowGpm());
    List<Abreast> abreast = new ArrayList<>();
    for (int i = 0; i < gpm.length; i++) {
      if (gpm[i] <= 0) {
        return;
      }
      abreast.add(new Abreast(legs.get(i).at(chosen.get(i), gpm[i]), gpm[i]));
    }
    Way way = way(abreast);
    Kept one = new Kept(way, costs.compared(way.goods()));
    if (way.leastCost() + wanted.eachPsi() * way.levels().lostPsi() > wanted.mostCost() + HAIR
        || kept.stream().anyMatch(other -> beats(other, one))) {
      return;
    }
    for (int i = 0; i < gpm.length; i++) {
      if (!legs.get(i).carries(chosen.get(i), gpm[i])) {
        return;
      }
    }
    kept.removeIf(other -> beats(one, other));
    kept.add(one);
  }

  private Way way(List<Abreast> abreast) {
    Goods goods = Goods.NOTHING;
    double lostPsi = Double.NEGATIVE_INFINITY;
    double peakPsi = Double.NEGATIVE_INFINITY;
    double bearsPsi = Double.POSITIVE_INFINITY;
    for (Abreast one : abreast) {
      LegLevels levels = one.way().levels();
      goods = goods.and(one.way().goods());
      lostPsi = Math.max(lostPsi, levels.lostPsi());
      peakPsi = Math.max(peakPsi, levels.peakPsi());
      bearsPsi = Math.min(bearsPsi, levels.bearsPsi());
    }
    LegLevels levels = new LegLevels(lostPsi, peakPsi, bearsPsi);
    return Way.of(abreast, goods, costs.least(goods), costs.toSource(goods), levels);
  }

  private boolean beats(Kept one, Kept other) {
    return one.way.toSource() <= other.way.toSource()
        && one.way.levels().asGoodAs(other.way.levels())
        && costs.mostOver(one.compared, other.compared) <= HAIR;
  }

  private DoubleUnaryOperator loss(Way way) {
    return losses.computeIfAbsent(way, legs.get(0)::lossPsi);
  }
}
