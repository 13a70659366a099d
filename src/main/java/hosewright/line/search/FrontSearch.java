package hosewright.line.search;

import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.GapBridges;
import hosewright.line.hose.LegLays;
import hosewright.line.model.Hydraulics;
import hosewright.line.water.LegFigures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds every plan that passes each check and is not beaten in price, pressure, weight and sections
 * at once.
 *
 * <p>Exact: a topology, a lay or a bridge is left out only when some plan found is as good in all
 * four as anything it could lead to, or when it must lose more than its {@link PressureBudget}.
 */
final class FrontSearch {
  private final Job job;
  private final Branching opening;
  private final Evaluation evaluation;
  private final int centsPerUnit;
  private final Front front;

  /** Whether a line failed for what every line of the job fails. */
  private boolean hopeless;

  FrontSearch(Job job, Branching opening, Evaluation evaluation, int centsPerUnit, Front front) {
    this.job = job;
    this.opening = opening;
    this.evaluation = evaluation;
    this.centsPerUnit = centsPerUnit;
    this.front = front;
  }

  void run(List<Topology> topologies) {
    List<Branch> opened = new ArrayList<>();
    for (Topology topology : topologies) {
      if (opening.leastCost(topology).isPresent()) {
        Branching.BranchOutline outline = opening.look(topology);
        if (outline.missing() == 0) {
          opened.add(opening.open(outline));
        }
      }
    }
    opened.sort(Comparator.comparingDouble(branch -> branch.bounds().leastCost()));
    List<Branch> passing = opened.stream().filter(Branch::mayPass).toList();
    int fewest = passing.stream().mapToInt(Branch::toSource).min().orElse(0);
    passing.stream().filter(branch -> branch.toSource() == fewest).forEach(this::searchBranch);
  }

  private void searchBranch(Branch topology) {
    lay(topology, new ArrayList<>(), topology.bounds().leastCost(), 0);
  }

  /** Chooses a lay for the next leg, then the bridges. */
  private void lay(Branch topology, List<Lay> laid, double leastCost, double lossPsi) {
    int leg = laid.size();
    if (leg == topology.lays().size()) {
      new OnLays(topology, laid).bridge(leastCost, lossPsi, topology.bounds().budget());
      return;
    }
    LegLays lays = topology.lays().get(leg);
    double leastElsewherePsi = topology.leastLayLossFromPsi(leg + 1) + topology.leastLossFromPsi(0);
    double elsewhere = leastCost - lays.leastCost();
    double leastLostPsi =
        lossPsi + topology.leastLayLossFromPsi(leg) + topology.leastLossFromPsi(0);
    lays.each(
        begun ->
            hopeless || front.covers(noBetterThan(topology, laid, begun, elsewhere, leastLostPsi)),
        choice -> {
          double lostPsi = lossPsi + choice.lossPsi();
          PressureBudget left =
              topology.bounds().budget().laying(leg, choice.ratedPsi(), choice.lossPsi());
          if (left.allows(lostPsi + leastElsewherePsi)) {
            laid.add(choice.value());
            lay(topology, laid, elsewhere + choice.leastCost(), lostPsi);
            laid.remove(leg);
          }
        });
  }

  /**
   * What no plan undercuts that has some legs laid and a lay begun for the next.
   *
   * @param elsewhere the least that all costs but the lay begun
   */
  private TradeOff noBetterThan(
      Branch topology, List<Lay> laid, LegLays.Begun begun, double elsewhere, double leastLossPsi) {
    boolean water = job.service().isWater();
    double lb = 0;
    int sections = 0;
    List<LegShape> legs = topology.topology().legs();
    for (int i = 0; i < legs.size(); i++) {
      LegShape leg = legs.get(i);
      if (i < laid.size()) {
        lb += LegFigures.chargedWeightLb(leg, laid.get(i));
        sections += laid.get(i).sections() * leg.lines();
      } else {
        LegLays.Begun least = i == laid.size() ? begun : topology.lays().get(i).begunWithNothing();
        lb += LegFigures.chargedWeightLb(leg, least.emptyLb(), leg.neededFt());
        sections += least.sections() * leg.lines();
      }
    }
    double leastPsi = water ? fixedPsi(topology) + leastLossPsi : 0;
    return TradeOff.atLeast(
        elsewhere + begun.cost(), centsPerUnit, leastPsi, water ? lb : 0, sections);
  }

  private double fixedPsi(Branch topology) {
    return job.needPsi()
        + job.run().riseFt() * Physical.PSI_PER_FT
        + PressureBudget.fixedLossPsi(job, topology.topology());
  }

  /** What is left to choose once hose and sections are: the bridges, which cost and lose. */
  private final class OnLays {
    private final Branch topology;
    private final List<Lay> lays;
    private final double chargedLb;
    private final int sections;
    private final double fixedPsi;
    private final List<Choice<List<Placed>>> chosen = new ArrayList<>();

    OnLays(Branch topology, List<Lay> lays) {
      this.topology = topology;
      this.lays = List.copyOf(lays);
      boolean water = job.service().isWater();
      int count = 0;
      double lb = 0;
      for (int i = 0; i < lays.size(); i++) {
        LegShape leg = topology.topology().legs().get(i);
        count += lays.get(i).sections() * leg.lines();
        lb += LegFigures.chargedWeightLb(leg, lays.get(i));
      }
      this.sections = count;
      this.chargedLb = water ? lb : 0;
      this.fixedPsi = water ? fixedPsi(topology) : 0;
    }

    /** Chooses a bridge for the next gap, or weighs the plan once every gap has one. */
    void bridge(double leastCost, double lossPsi, PressureBudget budget) {
      int gap = chosen.size();
      if (gap == topology.bridges().size()) {
        weigh();
        return;
      }
      GapBridges bridges = topology.bridges().get(gap);
      double leastElsewherePsi = topology.leastLossFromPsi(gap + 1);
      Topology.Stretch stretch = topology.stretches().get(gap);
      int place = 0;
      Optional<Choice<List<Placed>>> choice = bridges.at(place);
      while (choice.isPresent() && !hopeless) {
        double cost = leastCost - bridges.leastCost() + choice.get().leastCost();
        if (covered(cost, lossPsi + bridges.leastLossPsi() + leastElsewherePsi)) {
          return;
        }
        double lostPsi = lossPsi + choice.get().lossPsi();
        PressureBudget left =
            budget.bridging(choice.get().ratedPsi(), choice.get().lossPsi(), stretch);
        if (left.allows(lostPsi + leastElsewherePsi)
            && !covered(cost, lostPsi + leastElsewherePsi)) {
          chosen.add(choice.get());
          bridge(cost, lostPsi, left);
          chosen.remove(gap);
        }
        choice = bridges.at(++place);
      }
    }

    private boolean covered(double leastCost, double leastLossPsi) {
      double leastPsi = job.service().isWater() ? fixedPsi + leastLossPsi : 0;
      return front.covers(TradeOff.atLeast(leastCost, centsPerUnit, leastPsi, chargedLb, sections));
    }

    private void weigh() {
      List<List<Placed>> parts = chosen.stream().map(Choice::value).toList();
      Evaluation.Priced priced =
          evaluation.price(Assembly.of(job, topology.topology(), lays, parts));
      Hydraulics water = evaluation.water(priced);
      if (!front.admits(TradeOff.of(priced.total(), water, priced.line()))) {
        return;
      }
      Evaluated plan = evaluation.check(priced, water);
      hopeless |= plan.failsWhateverIsChosen();
      if (plan.passes()) {
        front.add(plan);
      }
    }
  }
}
