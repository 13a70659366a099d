package hosewright.line.search;

import hosewright.catalogue.Rating;
import hosewright.job.Job;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.GapBridges;
import hosewright.line.check.FlowChecks;
import hosewright.line.check.PracticeChecks;
import hosewright.line.check.PressureChecks;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.PriceFloor;
import hosewright.line.hose.LegLays;
import hosewright.line.water.BornePressure;
import hosewright.line.water.OuterVelocity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;

/** Finds what the catalogue has for a topology: lays, and bridges that stand what they must see. */
final class Branching {
  private final Job job;
  private final PriceFloor floor;
  private final BridgeChoices bridges;
  private final LayChoices lays;
  private final Accessories accessories;
  private final Map<LegLays, List<Choice<Lay>>> nearLays = new IdentityHashMap<>();

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
            || tooFast(topology)
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

  /** Whether water is too fast in couplings, or in what must stand in the line. */
  private boolean tooFast(Topology topology) {
    return topology.legs().stream().anyMatch(leg -> OuterVelocity.forbids(job, leg))
        || topology.fixedParts().stream()
            .anyMatch(
                fixed -> OuterVelocity.forbids(job, Placed.inLine(fixed.part(), fixed.lines())));
  }

  /** The topology as one looks at it who seeks the line nearest to passing where none does. */
  NearTopology near(Topology topology) {
    List<LegLays> legs = lays.of(topology);
    int rules = PracticeChecks.broken(job, topology) + (tooFast(topology) ? 1 : 0);
    int others = 0;
    others += legs.stream().allMatch(LegLays::inStock) ? 0 : 1;
    others += FlowChecks.tipTooLarge(job, topology.last().hose()) ? 1 : 0;
    RankedCost fixedCost = fixedCost(topology);
    int toSource = fixedCost.toSource();
    OptionalDouble sourcedPsi = PressureBudget.enoughPsi(job, topology);
    List<List<Choice<List<Placed>>>> over = new ArrayList<>();
    List<Topology.Gap> gaps = topology.gaps(job.from(), job.to());
    for (Topology.Gap gap : gaps) {
      List<Choice<List<Placed>>> sold = bridges.strongerAndWider(gap);
      toSource += sold.isEmpty() ? 1 : 0;
      over.add(sold.isEmpty() ? bridges.toSource(gap, sourcedPsi).cheapest(1) : sold);
    }
    List<List<Choice<Lay>>> laid = new ArrayList<>();
    for (int leg = 0; leg < legs.size(); leg++) {
      HoseLine hose = topology.legs().get(leg).hose();
      laid.add(nearLays.computeIfAbsent(legs.get(leg), lays -> strongerAndShorter(hose, lays)));
    }
    return new NearTopology(
        job,
        topology,
        new NearTopology.Choices(gaps.stream().map(Topology.Gap::stretch).toList(), over, laid),
        new NearTopology.Flaws(rules, toSource, others),
        fixedCost.units());
  }

  /**
   * Of the lays of a leg the cheapest, and the shortest of those sections that work at so much or
   * more and are tested so high or higher, for all that some section has.
   */
  private List<Choice<Lay>> strongerAndShorter(HoseLine hose, LegLays of) {
    double[] workingPsi = of(hose, BornePressure::workingPsi);
    double[] testedPsi = of(hose, BornePressure::testedPsi);
    Map<Lay, Choice<Lay>> compared = new LinkedHashMap<>();
    compared.put(of.cheapest().value(), of.cheapest());
    for (double leastPsi : Arrays.stream(workingPsi).sorted().distinct().toArray()) {
      for (double testPsi : Arrays.stream(testedPsi).sorted().distinct().toArray()) {
        of.shortestOf(option -> workingPsi[option] >= leastPsi && testedPsi[option] >= testPsi)
            .ifPresent(lay -> compared.putIfAbsent(lay.value(), lay));
      }
    }
    return List.copyOf(compared.values());
  }

  private double[] of(HoseLine hose, ToDoubleBiFunction<Job, Rating> psi) {
    return hose.options().stream()
        .mapToDouble(option -> psi.applyAsDouble(job, option.rating()))
        .toArray();
  }

  private boolean rated(Topology.Fixed fixed, double seenPsi) {
    double temperatureF = job.service().temperatureOrUsualF();
    OptionalDouble ratedPsi = fixed.part().item().rating().workingPsiAt(temperatureF);
    return ratedPsi.orElse(seenPsi) >= seenPsi - PressureChecks.HAIR_PSI;
  }
}
