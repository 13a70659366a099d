package hosewright.line.search;

import hosewright.job.Job;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.GapBridges;
import hosewright.line.check.FlowChecks;
import hosewright.line.check.PracticeChecks;
import hosewright.line.check.PressureChecks;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.PriceFloor;
import hosewright.line.hose.LegLays;
import hosewright.line.water.OuterVelocity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what the catalogue has for a topology: lays, and bridges that stand what they must see. */
final class Branching {
  private final Job job;
  private final PriceFloor floor;
  private final BridgeChoices bridges;
  private final LayChoices lays;
  private final Accessories accessories;

  Branching(
      Job job, PriceFloor floor, BridgeChoices bridges, LayChoices lays, Accessories accessories) {
    this.job = job;
    this.floor = floor;
    this.bridges = bridges;
    this.lays = lays;
    this.accessories = accessories;
  }

  /**
   * No plan in a topology costs less, its bridges left out and its sections taken at their least;
   * empty when no lay is possible.
   */
  Optional<RankedCost> leastCost(Topology topology) {
    RankedCost cost = fixedCost(topology);
    for (LegLays leg : lays.of(topology)) {
      if (leg.isEmpty()) {
        return Optional.empty();
      }
      cost = cost.plus(leg.bound());
    }
    return Optional.of(cost);
  }

  private RankedCost fixedCost(Topology topology) {
    Accessories.Least besides = accessories.least(topology);
    double cost = besides.cost();
    for (Topology.Fixed fixed : topology.fixedParts()) {
      cost += floor.ofOne(fixed.part().item()) * fixed.lines();
    }
    return new RankedCost(besides.toSource(), cost);
  }

  /**
   * A topology, and the bridges there are for it.
   *
   * @param bridges over each gap; empty where the catalogue has none
   * @param fixedLossPsi what the parts take that must stand in the line, psi
   * @param leastSeenPsi what every part of a stretch sees at the least, psi
   */
  record BranchOutline(
      Topology topology,
      List<Topology.Gap> gaps,
      List<Optional<GapBridges>> bridges,
      double fixedLossPsi,
      Map<Topology.Stretch, Double> leastSeenPsi) {

    long missing() {
      return bridges.stream().filter(Optional::isEmpty).count();
    }
  }

  /** Looks for bridges over each gap of a topology that can be laid. */
  BranchOutline look(Topology topology) {
    List<Topology.Gap> gaps = topology.gaps(job.from(), job.to());
    double fixedLossPsi = PressureBudget.fixedLossPsi(job, topology);
    double lossPsi = fixedLossPsi;
    for (LegLays leg : lays.of(topology)) {
      lossPsi += leg.leastLossPsi();
    }
    for (Topology.Gap gap : gaps) {
      lossPsi += bridges.over(gap, 0).map(GapBridges::leastLossPsi).orElse(0.0);
    }
    Map<Topology.Stretch, Double> seenPsi = new EnumMap<>(Topology.Stretch.class);
    for (Topology.Stretch stretch : Topology.Stretch.values()) {
      seenPsi.put(stretch, PressureBudget.leastSeenPsi(job, stretch, lossPsi));
    }
    List<Optional<GapBridges>> over = new ArrayList<>();
    for (Topology.Gap gap : gaps) {
      over.add(bridges.over(gap, seenPsi.get(gap.stretch())));
    }
    return new BranchOutline(topology, gaps, over, fixedLossPsi, seenPsi);
  }

  /**
   * The topology ready to be searched, with adapters to be sourced over gaps that have no bridge.
   */
  Branch open(BranchOutline outline) {
    Topology topology = outline.topology();
    List<LegLays> legs = lays.of(topology);
    OptionalDouble sourcedPsi = PressureBudget.enoughPsi(job, topology);
    List<GapBridges> over = new ArrayList<>();
    for (int i = 0; i < outline.gaps().size(); i++) {
      Topology.Gap gap = outline.gaps().get(i);
      over.add(outline.bridges().get(i).orElseGet(() -> bridges.toSource(gap, sourcedPsi)));
    }
    boolean hopeless =
        legs.stream().anyMatch(leg -> !leg.inStock())
            || !PracticeChecks.keeps(job, topology)
            || FlowChecks.tipTooLarge(job, topology.last().hose())
            || topology.legs().stream().anyMatch(leg -> OuterVelocity.forbids(job, leg))
            || topology.fixedParts().stream()
                .anyMatch(
                    fixed -> OuterVelocity.forbids(job, Placed.inLine(fixed.part(), fixed.lines())))
            || topology.fixedParts().stream()
                .anyMatch(fixed -> !rated(fixed, outline.leastSeenPsi().get(fixed.stretch())));
    return Branch.of(
        topology,
        outline.gaps().stream().map(Topology.Gap::stretch).toList(),
        over,
        legs,
        fixedCost(topology),
        PressureBudget.of(job, topology, outline.fixedLossPsi()),
        hopeless);
  }

  private boolean rated(Topology.Fixed fixed, double seenPsi) {
    double temperatureF = job.service().temperatureOrUsualF();
    OptionalDouble ratedPsi = fixed.part().item().rating().workingPsiAt(temperatureF);
    return ratedPsi.orElse(seenPsi) >= seenPsi - PressureChecks.HAIR_PSI;
  }
}
