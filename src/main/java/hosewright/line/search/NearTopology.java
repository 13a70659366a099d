package hosewright.line.search;

import hosewright.catalogue.Rating;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Topology;
import hosewright.line.water.BornePressure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * A topology whose lines all fail, and how far they are from passing at the least: by how much
 * pressures miss their limits follows from what its choices lose and may carry.
 */
final class NearTopology {
  private static final double UNRATED = Double.POSITIVE_INFINITY;

  private final Job job;
  private final Topology topology;
  private final Choices choices;
  private final Flaws flaws;
  private final Line fixed;

  /** By leg, what its strongest hose may work at, and what its service test allows, psi. */
  private final double[] workingPsi;

  private final double[] testedPsi;

  /** By leg, what hose sees over the pressure at the source when nothing flows, psi. */
  private final double[] belowPsi;

  /**
   * What is left to choose, those that lose least first.
   *
   * @param stretches where each gap lies
   * @param bridges over each gap
   * @param lays of each leg
   */
  record Choices(
      List<Topology.Stretch> stretches,
      List<List<Choice<List<Placed>>>> bridges,
      List<List<Choice<Lay>>> lays) {

    Choices {
      bridges = bridges.stream().map(Choices::leastLostFirst).toList();
      lays = lays.stream().map(Choices::leastLostFirst).toList();
    }

    private static <T> List<Choice<T>> leastLostFirst(List<Choice<T>> choices) {
      return choices.stream()
          .sorted(
              Comparator.<Choice<T>>comparingDouble(Choice::lossPsi)
                  .thenComparingDouble(Choice::leastCost))
          .toList();
    }
  }

  /**
   * What no choice mends.
   *
   * @param rules of the trade that are broken
   * @param toSource parts to be sourced
   * @param others checks that fail and are not of a pressure
   */
  record Flaws(int rules, int toSource, int others) {}

  /**
   * How near lines come at the best.
   *
   * @param missedPsi by how much they miss the limits of their pressures, together, psi
   * @param cost in the currency's major unit
   */
  record Reach(double missedPsi, double cost) {}

  /** Decides which lines are looked at, and looks at them. */
  interface Looker {
    boolean wants(Reach reach);

    void look(List<Lay> lays, List<List<Placed>> bridges);
  }

  /**
   * A line of which some choices are made, and the least of all that is not chosen yet.
   *
   * @param ratedPsi what fittings may carry, by stretch
   * @param carriedPsi what hose may carry, by leg
   */
  private record Line(double lossPsi, double cost, double[] ratedPsi, double[] carriedPsi) {

    Line plus(double lossPsi, double cost) {
      return new Line(this.lossPsi + lossPsi, this.cost + cost, ratedPsi, carriedPsi);
    }

    <T> Line choosing(Choice<T> choice, List<Choice<T>> from) {
      return plus(choice.lossPsi() - from.get(0).lossPsi(), choice.leastCost() - leastCost(from));
    }

    Line rated(Topology.Stretch stretch, double psi) {
      double[] rated = ratedPsi.clone();
      rated[stretch.ordinal()] = Math.min(rated[stretch.ordinal()], psi);
      return new Line(lossPsi, cost, rated, carriedPsi);
    }

    Line carrying(int leg, double psi) {
      double[] carried = carriedPsi.clone();
      carried[leg] = psi;
      return new Line(lossPsi, cost, ratedPsi, carried);
    }
  }

  private static <T> double leastCost(List<Choice<T>> from) {
    return from.stream().mapToDouble(Choice::leastCost).min().orElseThrow();
  }

  /**
   * @param fixedCost least cost of what stands in every line, and of what is asked for besides it
   */
  NearTopology(Job job, Topology topology, Choices choices, Flaws flaws, double fixedCost) {
    this.job = job;
    this.topology = topology;
    this.choices = choices;
    this.flaws = flaws;
    this.workingPsi = mostOfEachLeg(BornePressure::workingPsi);
    this.testedPsi = mostOfEachLeg(BornePressure::testedPsi);
    this.belowPsi = new double[topology.legs().size()];
    Arrays.setAll(belowPsi, leg -> PressureBudget.belowSourcePsi(job, topology, leg));
    this.fixed = fixed(fixedCost);
  }

  private Line fixed(double cost) {
    double[] ratedPsi = new double[Topology.Stretch.values().length];
    Arrays.fill(ratedPsi, UNRATED);
    double[] carriedPsi =
        topology.legs().stream()
            .mapToDouble(leg -> PressureBudget.mostCarriedPsi(job, leg.hose()))
            .toArray();
    double lossPsi = job.service().isWater() ? PressureBudget.fixedLossPsi(job, topology) : 0;
    Line line = new Line(lossPsi, cost, ratedPsi, carriedPsi);
    for (Topology.Fixed part : topology.fixedParts()) {
      double psi = BornePressure.workingPsi(job, part.part().item().rating());
      line = line.rated(part.stretch(), psi);
    }
    for (List<Choice<List<Placed>>> over : choices.bridges()) {
      line = line.plus(over.get(0).lossPsi(), leastCost(over));
    }
    for (List<Choice<Lay>> lays : choices.lays()) {
      line = line.plus(lays.get(0).lossPsi(), leastCost(lays));
    }
    return line;
  }

  private double[] mostOfEachLeg(ToDoubleBiFunction<Job, Rating> psi) {
    return topology.legs().stream()
        .mapToDouble(
            leg ->
                leg.hose().options().stream()
                    .mapToDouble(option -> psi.applyAsDouble(job, option.rating()))
                    .max()
                    .orElse(UNRATED))
        .toArray();
  }

  Topology topology() {
    return topology;
  }

  Flaws flaws() {
    return flaws;
  }

  /** How near any of its lines may come. */
  Reach least() {
    return reach(fixed);
  }

  private Reach reach(Line line) {
    return new Reach(job.service().isWater() ? missedPsi(line) : 0, line.cost());
  }

  /** As a {@link Shortfall} adds up what is lacking and what is too much. */
  private double missedPsi(Line line) {
    double takenPsi = job.needPsi() + job.run().riseFt() * Physical.PSI_PER_FT + line.lossPsi();
    double lackedPsi =
        job.supply().map(supply -> takenPsi - supply.pressurePsi(job.flowGpm())).orElse(0.0);
    double standingPsi = job.supply().map(Supply::closedPsi).orElse(takenPsi);
    double fittingsPsi = 0;
    for (Topology.Stretch stretch : Topology.Stretch.values()) {
      double ratedPsi = line.ratedPsi()[stretch.ordinal()];
      if (ratedPsi < UNRATED) {
        double seenPsi = PressureBudget.leastSeenPsi(job, stretch, line.lossPsi());
        fittingsPsi = Math.max(fittingsPsi, seenPsi - ratedPsi);
      }
    }
    double neededPsi = Math.max(0, job.needPsi() - workingPsi[workingPsi.length - 1]);
    double weakestPsi = beyond(standingPsi, line.carriedPsi());
    double strongestPsi = beyond(standingPsi, workingPsi) + beyond(standingPsi, testedPsi);
    return Math.max(0, lackedPsi) + fittingsPsi + neededPsi + Math.max(weakestPsi, strongestPsi);
  }

  /** By how much hose sees more at the most than it bears. */
  private double beyond(double standingPsi, double[] bornePsi) {
    double beyondPsi = 0;
    for (int leg = 0; leg < belowPsi.length; leg++) {
      beyondPsi = Math.max(beyondPsi, standingPsi + belowPsi[leg] - bornePsi[leg]);
    }
    return beyondPsi;
  }

  /** Shows its lines, those that lose least first, but for those that are not wanted. */
  void show(Looker looker) {
    bridge(fixed, List.of(), looker);
  }

  private void bridge(Line line, List<List<Placed>> chosen, Looker looker) {
    int gap = chosen.size();
    if (gap == choices.bridges().size()) {
      lay(line, chosen, List.of(), looker);
      return;
    }
    List<Choice<List<Placed>>> over = choices.bridges().get(gap);
    for (Choice<List<Placed>> choice : over) {
      Line now = line.choosing(choice, over).rated(choices.stretches().get(gap), choice.ratedPsi());
      if (looker.wants(reach(now))) {
        bridge(now, and(chosen, choice.value()), looker);
      }
    }
  }

  private void lay(Line line, List<List<Placed>> bridges, List<Lay> chosen, Looker looker) {
    int leg = chosen.size();
    if (leg == choices.lays().size()) {
      looker.look(chosen, bridges);
      return;
    }
    List<Choice<Lay>> lays = choices.lays().get(leg);
    for (Choice<Lay> choice : lays) {
      Line now = line.choosing(choice, lays).carrying(leg, choice.ratedPsi());
      if (looker.wants(reach(now))) {
        lay(now, bridges, and(chosen, choice.value()), looker);
      }
    }
  }

  private static <T> List<T> and(List<T> chosen, T next) {
    List<T> more = new ArrayList<>(chosen);
    more.add(next);
    return more;
  }
}
