package hosewright.line;

import hosewright.hydraulics.Physical;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds every plan that passes each check and is not beaten in price, pressure, weight and sections
 * at once.
 *
 * <p>Exact: a frame, a lay or a bridge is left out only when some plan found is as good in all four
 * as anything it could lead to, or when it must lose more than its {@link PressureBudget}.
 */
final class FrontSearch {
  private final Job job;
  private final Opening opening;
  private final Evaluation evaluation;
  private final int centsPerUnit;
  private final Front front;

  FrontSearch(Job job, Opening opening, Evaluation evaluation, int centsPerUnit, Front front) {
    this.job = job;
    this.opening = opening;
    this.evaluation = evaluation;
    this.centsPerUnit = centsPerUnit;
    this.front = front;
  }

  void run(List<Frame> frames) {
    List<Opened> opened = new ArrayList<>();
    for (Frame frame : frames) {
      if (opening.leastCost(frame).isPresent()) {
        Opening.Unopened unopened = opening.look(frame);
        if (unopened.missing() == 0) {
          opened.add(opening.open(unopened));
        }
      }
    }
    opened.sort(Comparator.comparingDouble(Opened::leastCost));
    opened.stream().filter(Opened::mayPass).forEach(this::searchFrame);
  }

  private void searchFrame(Opened frame) {
    lay(frame, new ArrayList<>(), frame.leastCost(), 0);
  }

  /** Chooses a lay for the next leg, then the bridges. */
  private void lay(Opened frame, List<Lay> laid, double leastCost, double lossPsi) {
    int leg = laid.size();
    if (leg == frame.lays().size()) {
      new OnLays(frame, laid).bridge(leastCost, lossPsi, frame.budget());
      return;
    }
    LegLays lays = frame.lays().get(leg);
    double leastElsewherePsi = frame.leastLayLossFromPsi(leg + 1) + frame.leastLossFromPsi(0);
    double elsewhere = leastCost - lays.leastCost();
    double leastLostPsi = lossPsi + frame.leastLayLossFromPsi(leg) + frame.leastLossFromPsi(0);
    lays.each(
        begun -> front.covers(noBetterThan(frame, laid, begun, elsewhere, leastLostPsi)),
        choice -> {
          double lostPsi = lossPsi + choice.lossPsi();
          PressureBudget left = frame.budget().carrying(choice.ratedPsi());
          if (left.allows(lostPsi + leastElsewherePsi)) {
            laid.add(choice.value());
            lay(frame, laid, elsewhere + choice.leastCost(), lostPsi);
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
      Opened frame, List<Lay> laid, LegLays.Begun begun, double elsewhere, double leastLossPsi) {
    boolean water = job.service().isWater();
    double lb = 0;
    int sections = 0;
    List<Leg> legs = frame.frame().legs();
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      if (i < laid.size()) {
        lb += LegFigures.chargedWeightLb(leg, laid.get(i));
        sections += laid.get(i).sections() * leg.lines();
      } else {
        LegLays.Begun least = i == laid.size() ? begun : frame.lays().get(i).begunWithNothing();
        lb += LegFigures.chargedWeightLb(leg, least.emptyLb(), leg.neededFt());
        sections += least.sections() * leg.lines();
      }
    }
    double leastPsi = water ? fixedPsi(frame) + leastLossPsi : 0;
    return TradeOff.atLeast(
        elsewhere + begun.cost(), centsPerUnit, leastPsi, water ? lb : 0, sections);
  }

  private double fixedPsi(Opened frame) {
    return job.needPsi()
        + job.run().riseFt() * Physical.PSI_PER_FT
        + PressureBudget.fixedLossPsi(job, frame.frame());
  }

  /** What is left to choose once hose and sections are: the bridges, which cost and lose. */
  private final class OnLays {
    private final Opened frame;
    private final List<Lay> lays;
    private final double chargedLb;
    private final int sections;
    private final double fixedPsi;
    private final List<Choice<List<Placed>>> chosen = new ArrayList<>();

    OnLays(Opened frame, List<Lay> lays) {
      this.frame = frame;
      this.lays = List.copyOf(lays);
      boolean water = job.service().isWater();
      int count = 0;
      double lb = 0;
      for (int i = 0; i < lays.size(); i++) {
        Leg leg = frame.frame().legs().get(i);
        count += lays.get(i).sections() * leg.lines();
        lb += LegFigures.chargedWeightLb(leg, lays.get(i));
      }
      this.sections = count;
      this.chargedLb = water ? lb : 0;
      this.fixedPsi = water ? fixedPsi(frame) : 0;
    }

    /** Chooses a bridge for the next gap, or weighs the plan once every gap has one. */
    void bridge(double leastCost, double lossPsi, PressureBudget budget) {
      int gap = chosen.size();
      if (gap == frame.bridges().size()) {
        weigh();
        return;
      }
      GapBridges bridges = frame.bridges().get(gap);
      double leastElsewherePsi = frame.leastLossFromPsi(gap + 1);
      Frame.Stretch stretch = frame.stretches().get(gap);
      int place = 0;
      Optional<Choice<List<Placed>>> choice = bridges.at(place);
      while (choice.isPresent()) {
        double cost = leastCost - bridges.leastCost() + choice.get().leastCost();
        if (covered(cost, lossPsi + bridges.leastLossPsi() + leastElsewherePsi)) {
          return;
        }
        double lostPsi = lossPsi + choice.get().lossPsi();
        PressureBudget left = budget.holding(choice.get().ratedPsi(), stretch);
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
      Evaluated plan =
          evaluation.check(evaluation.price(Assembly.of(job, frame.frame(), lays, parts)));
      if (plan.passes()) {
        front.add(plan);
      }
    }
  }
}
