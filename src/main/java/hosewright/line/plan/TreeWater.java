package hosewright.line.plan;

import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.working.Working;
import hosewright.job.layout.LayoutJob;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.search.Divider;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.CrossCheck;
import hosewright.line.water.LegFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The water of a whole layout: along the way to the appliance with least to spare. */
final class TreeWater {
  private final LayoutJob layout;
  private final FedLayout fed;
  private final FedLeg worst;
  private final List<FedLeg> way;

  private TreeWater(LayoutJob layout, FedLayout fed) {
    this.layout = layout;
    this.fed = fed;
    this.worst = fed.worstOff();
    this.way = worst.way();
  }

  static Hydraulics of(LayoutJob layout, FedLayout fed) {
    Hydraulics first = fed.legs().get(0).hydraulics();
    return first.calculated() ? new TreeWater(layout, fed).water() : first;
  }

  private Hydraulics water() {
    boolean stated = layout.supply().isPresent();
    Hydraulics first = way.get(0).hydraulics();
    return new Hydraulics(
        new Hydraulics.Pressures(
            fed.whole().needsPsi(),
            stated ? Optional.of(fed.source().flowingPsi()) : Optional.empty(),
            worst.outletPsi()),
        new Hydraulics.Losses(
            along(Hydraulics::frictionLossPsi),
            along(Hydraulics::elevationLossPsi),
            along(Hydraulics::adapterLossPsi),
            along(Hydraulics::applianceLossPsi)
                + way.stream().mapToDouble(leg -> Math.max(0, leg.dividerPsi())).sum(),
            pumped()),
        new Hydraulics.Friction(
            first.frictionBasis(), first.frictionCoefficient(), crossCheck(), List.of()),
        new Hydraulics.Forces(
            most(Hydraulics::velocityFtPerS),
            reaction(),
            most(Hydraulics::surgeLowPsi),
            most(Hydraulics::surgeHighPsi)),
        filled(),
        way.stream().flatMap(leg -> leg.stations().stream()).toList(),
        working());
  }

  /** What pumps on the way add. */
  private Optional<Double> pumped() {
    boolean pumps =
        way.stream().anyMatch(leg -> leg.laid().divider().flatMap(Divider::pump).isPresent());
    return pumps
        ? Optional.of(-way.stream().mapToDouble(leg -> Math.min(0, leg.dividerPsi())).sum())
        : Optional.empty();
  }

  private double along(ToDoubleFunction<Hydraulics> figure) {
    return way.stream().map(FedLeg::hydraulics).mapToDouble(figure).sum();
  }

  private double most(ToDoubleFunction<Hydraulics> figure) {
    return fed.legs().stream().map(FedLeg::hydraulics).mapToDouble(figure).max().orElseThrow();
  }

  private double ofAll(ToDoubleFunction<Hydraulics> figure) {
    return fed.legs().stream()
        .mapToDouble(leg -> figure.applyAsDouble(leg.hydraulics()) * leg.laid().asked().copies())
        .sum();
  }

  /** The greatest of all nozzles. */
  private Optional<Double> reaction() {
    return fed.legs().stream()
        .filter(leg -> leg.laid().asked().last())
        .flatMap(leg -> leg.hydraulics().reactionLbf().stream())
        .max(Double::compare);
  }

  private List<CrossCheck> crossCheck() {
    List<CrossCheck> sums = new ArrayList<>(way.get(0).hydraulics().crossCheck());
    for (FedLeg leg : way.subList(1, way.size())) {
      for (int i = 0; i < sums.size(); i++) {
        CrossCheck sum = sums.get(i);
        sums.set(
            i,
            new CrossCheck(
                sum.law(),
                sum.c(),
                sum.roughnessIn(),
                sum.waterTemperatureF(),
                sum.boreIn(),
                sum.frictionLossPsi() + leg.hydraulics().crossCheck().get(i).frictionLossPsi()));
      }
    }
    return sums;
  }

  private Hydraulics.Filled filled() {
    double allGal =
        fed.legs().stream()
            .mapToDouble(
                leg ->
                    LegFigures.of(leg.job(), leg.line()).stream()
                            .mapToDouble(LegFigures::allWaterGal)
                            .sum()
                        * leg.laid().asked().copies())
            .sum();
    return new Hydraulics.Filled(
        way.get(0).hydraulics().waterGal(),
        ofAll(Hydraulics::emptyWeightLb),
        ofAll(Hydraulics::chargedWeightLb),
        Physical.fillMinutes(allGal, layout.flowGpm()));
  }

  private List<Working.Step> working() {
    List<Working.Step> steps = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      Hydraulics shown =
          PlanWorking.shown(leg.job().withSupply(Optional.empty()), leg.line(), leg.hydraulics());
      for (Working.Step step : shown.working()) {
        steps.add(
            new Working.Step(
                leg.name() + ": " + step.what(),
                step.formula(),
                step.numbers(),
                step.result(),
                step.unit(),
                step.source()));
      }
    }
    return steps;
  }
}
