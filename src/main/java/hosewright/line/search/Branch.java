package hosewright.line.search;

import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.MakeUpOrder;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.GapBridges;
import hosewright.line.hose.LegLays;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;

/**
 * A topology with everything that is left to choose in it.
 *
 * @param stretches where each gap lies
 * @param bridges over each gap
 * @param known how many of the bridges over each gap are weighed
 * @param lays of each leg
 */
record Branch(
    Topology topology,
    List<Topology.Stretch> stretches,
    List<GapBridges> bridges,
    List<Integer> known,
    List<LegLays> lays,
    Bounds bounds) {
  private static final int FIRST_FETCH = 8;
  private static final int GROWTH = 4;

  /**
   * @param fixedCost least cost of the parts that must stand in the line, and of what is asked for
   *     besides it
   */
  static Branch of(
      Topology topology,
      List<Topology.Stretch> stretches,
      List<GapBridges> bridges,
      List<LegLays> lays,
      RankedCost fixedCost,
      PressureBudget budget,
      boolean hopeless) {
    List<Integer> known = Collections.nCopies(bridges.size(), FIRST_FETCH);
    int toSource = fixedCost.toSource();
    double leastCost = fixedCost.units();
    for (LegLays leg : lays) {
      leastCost += leg.leastCost();
    }
    for (GapBridges gap : bridges) {
      toSource += gap.isSold() ? 0 : 1;
      leastCost += gap.leastCost();
    }
    Bounds bounds = new Bounds(new RankedCost(toSource, leastCost), budget, hopeless);
    return new Branch(topology, stretches, bridges, known, lays, bounds);
  }

  /** Least cost of all that is in every plan of it: its lays and bridges come on top. */
  double fixedCost() {
    double cost = bounds.leastCost();
    for (LegLays leg : lays) {
      cost -= leg.leastCost();
    }
    for (GapBridges gap : bridges) {
      cost -= gap.leastCost();
    }
    return cost;
  }

  /** Least loss of all lays from a leg on, psi. */
  double leastLayLossFromPsi(int leg) {
    double psi = 0;
    for (int i = leg; i < lays.size(); i++) {
      psi += lays.get(i).leastLossPsi();
    }
    return psi;
  }

  /** Parts without a price in every plan of it. */
  int toSource() {
    return bounds.least().toSource();
  }

  /** Whether the catalogue has no bridge over some gap. */
  boolean isUnjoined() {
    return bridges.stream().anyMatch(gap -> !gap.isSold());
  }

  /** Lays that lose least, and of the cheap ones those that are rated highest. */
  Set<List<Lay>> laysToCompare() {
    Set<List<Lay>> compared = new LinkedHashSet<>();
    compared.add(lays.stream().map(leg -> leg.shortest().value()).toList());
    compared.add(lays.stream().map(leg -> leg.strongest(FIRST_FETCH).value()).toList());
    return compared;
  }

  /**
   * The cheapest bridges, those that lose least, and of the cheap ones the strongest and those that
   * ease making the line up.
   */
  Set<List<List<Placed>>> bridgesToCompare() {
    Set<List<List<Placed>>> compared = new LinkedHashSet<>();
    compared.add(cheapestBridges());
    compared.add(widestBridges());
    compared.add(strongestBridges());
    compared.add(easingBridges());
    return compared;
  }

  private List<List<Placed>> cheapestBridges() {
    return bridges.stream().map(gap -> gap.cheapest(1).get(0).value()).toList();
  }

  /** Bridges that lose least. */
  private List<List<Placed>> widestBridges() {
    return bridges.stream().map(gap -> gap.widest().value()).toList();
  }

  /** Of the cheap bridges those that are rated highest. */
  private List<List<Placed>> strongestBridges() {
    return bridges.stream()
        .map(
            gap ->
                gap.cheapest(FIRST_FETCH).stream()
                    .max(Comparator.comparingDouble(Choice::ratedPsi))
                    .orElseThrow()
                    .value())
        .toList();
  }

  /** Of the cheap bridges the first over each gap that eases making the line up, if any does. */
  private List<List<Placed>> easingBridges() {
    return bridges.stream()
        .map(gap -> gap.cheapest(FIRST_FETCH).stream().map(Choice::value).toList())
        .map(
            cheap ->
                cheap.stream()
                    .filter(bridge -> bridge.stream().anyMatch(MakeUpOrder::eases))
                    .findFirst()
                    .orElse(cheap.get(0)))
        .toList();
  }

  /** Least loss of all bridges from a gap on, psi. */
  double leastLossFromPsi(int gap) {
    double psi = 0;
    for (int i = gap; i < bridges.size(); i++) {
      psi += bridges.get(i).leastLossPsi();
    }
    return psi;
  }

  /** Whether some choice may pass. */
  boolean mayPass() {
    return !bounds.hopeless() && leastLaid().allows(leastLayLossFromPsi(0) + leastLossFromPsi(0));
  }

  /** The budget when hose and bridges lose their least. */
  private PressureBudget leastLaid() {
    PressureBudget left =
        bounds.budget().laying(0, Double.POSITIVE_INFINITY, lays.get(0).leastLossPsi());
    for (int gap = 0; gap < bridges.size(); gap++) {
      double lossPsi = bridges.get(gap).leastLossPsi();
      left = left.bridging(Double.POSITIVE_INFINITY, lossPsi, stretches.get(gap));
    }
    return left;
  }

  /** The bridges weighed over a gap, cheapest first. */
  List<Choice<List<Placed>>> choices(int gap) {
    return bridges.get(gap).cheapest(known.get(gap));
  }

  /**
   * The topology with more bridges, where one not yet weighed could still win.
   *
   * @param cannotBeat tells whether a least cost is too much already
   */
  Optional<Branch> grown(DoublePredicate cannotBeat) {
    List<Integer> more = new ArrayList<>(known);
    for (int i = 0; i < bridges.size(); i++) {
      List<Choice<List<Placed>>> choices = choices(i);
      double dearest = choices.get(choices.size() - 1).leastCost();
      double least = bounds.leastCost() - Choice.least(choices) + dearest;
      if (!cannotBeat.test(least) && bridges.get(i).moreThan(known.get(i))) {
        more.set(i, known.get(i) * GROWTH);
      }
    }
    return more.equals(known)
        ? Optional.empty()
        : Optional.of(new Branch(topology, stretches, bridges, List.copyOf(more), lays, bounds));
  }

  /**
   * What is known of all its choices before one is made.
   *
   * @param least no plan in this topology costs less
   * @param hopeless whether no choice passes, because too little is left of what is discontinued or
   *     a part that must stand in the line is rated too low
   */
  record Bounds(RankedCost least, PressureBudget budget, boolean hopeless) {

    /** The least in money, whatever is to be sourced besides. */
    double leastCost() {
      return least.units();
    }
  }
}
