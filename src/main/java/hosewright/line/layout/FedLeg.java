package hosewright.line.layout;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.check.Checks;
import hosewright.line.check.PressureChecks;
import hosewright.line.check.PumpChecks;
import hosewright.line.goods.Basket;
import hosewright.line.layout.search.Divider;
import hosewright.line.layout.search.LaidLeg;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.water.PlanHydraulics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A laid leg with the water in it.
 *
 * @param job the leg as it is fed
 * @param begins how much higher than the source it begins, ft, and how far along the hose
 * @param before the leg where whose end it begins; empty at the source
 * @param dividerPsi what the divider between the two takes, psi; less than nothing where it pumps
 * @param meeting the name of all those it meets and itself; empty where it meets none
 */
public record FedLeg(
    LaidLeg laid,
    Job job,
    Hydraulics hydraulics,
    Begins begins,
    Optional<FedLeg> before,
    double dividerPsi,
    Optional<String> meeting) {

  /** One that meets no others. */
  FedLeg(
      LaidLeg laid,
      Job job,
      Hydraulics hydraulics,
      Begins begins,
      Optional<FedLeg> before,
      double dividerPsi) {
    this(laid, job, hydraulics, begins, before, dividerPsi, Optional.empty());
  }

  /**
   * Where a leg begins.
   *
   * @param elevationFt above the source, ft
   * @param distanceFt hose laid up to there, ft
   */
  public record Begins(double elevationFt, double distanceFt) {
    static final Begins SOURCE = new Begins(0, 0);
  }

  public Assembly line() {
    return laid.way().line();
  }

  public String name() {
    return laid.asked().name();
  }

  /** What all that ends where it ends is called. */
  public String together() {
    return meeting.orElse(name());
  }

  /** Pressure where it ends with the planned flow running, psi. */
  public double outletPsi() {
    return inlet().flowingPsi() - laid.way().levels().lostPsi();
  }

  /** What is left at its end over what is needed there, psi. */
  public double sparePsi() {
    return outletPsi() - laid.needPsi();
  }

  Inlet inlet() {
    return (Inlet) job.supply().orElseThrow();
  }

  /** The legs from the source to this one. */
  public List<FedLeg> way() {
    List<FedLeg> way = new ArrayList<>(before.map(FedLeg::way).orElse(List.of()));
    way.add(this);
    return way;
  }

  /** Pressure at its stations, counted from the source; the first is what it begins behind. */
  public List<Station> stations() {
    List<Station> stations = new ArrayList<>();
    for (Station station : hydraulics.profile()) {
      String name =
          stations.isEmpty()
              ? before.map(FedLeg::dividerName).orElse(station.name())
              : station.name();
      stations.add(
          new Station(
              name,
              begins.distanceFt() + station.distanceFt(),
              begins.elevationFt() + station.elevationFt(),
              station.flowingPsi(),
              station.closedPsi(),
              station.place()));
    }
    return stations;
  }

  private String dividerName() {
    return laid.divider().orElseThrow().towards(0).description();
  }

  List<Check> checks(List<Basket.Purchase> purchases) {
    List<Check> checks = new ArrayList<>(Checks.of(job, line(), hydraulics, purchases));
    if (hydraulics.calculated()) {
      laid.divider()
          .filter(one -> one.item().isPresent())
          .flatMap(one -> PressureChecks.ofDivider(job, one.towards(0), highestAtEndPsi()))
          .ifPresent(checks::add);
      laid.divider().flatMap(Divider::pump).map(this::checksOf).ifPresent(checks::addAll);
    }
    return checks;
  }

  private List<Check> checksOf(Divider.Pump pump) {
    return new PumpChecks(
            pump.name(),
            pump.boost(),
            job.flowGpm(),
            pump.curve().mostFlowGpm(),
            new Inlet(outletPsi(), closedAtEndPsi()),
            neededBehindPsi(),
            pump.drafting())
        .all();
  }

  /** The most that a leg behind it needs where it begins, psi. */
  public double neededBehindPsi() {
    return laid.behind().stream().mapToDouble(LaidLeg::needsPsi).max().orElse(0);
  }

  /** How much more a pump at its end gives than all behind it need, psi; 0 without one. */
  public double pumpedOverPsi() {
    return laid.divider()
        .flatMap(Divider::boost)
        .map(boost -> Math.max(0, boost.outletPsi(outletPsi()) - neededBehindPsi()))
        .orElse(0.0);
  }

  /** Flowing or shut. */
  private double highestAtEndPsi() {
    return Math.max(outletPsi(), closedAtEndPsi());
  }

  /** Pressure where it ends with nothing flowing, psi. */
  public double closedAtEndPsi() {
    return inlet().closedPsi() - job.run().riseFt() * Physical.PSI_PER_FT;
  }

  /** Every leg from the source on, fed with what the source holds. */
  static List<FedLeg> of(List<LaidLeg> atSource, Inlet source) {
    List<FedLeg> fed = new ArrayList<>();
    for (LaidLeg leg : atSource) {
      feed(leg, source, Begins.SOURCE, Optional.empty(), 0, fed);
    }
    return List.copyOf(fed);
  }

  private static void feed(
      LaidLeg laid,
      Inlet inlet,
      Begins begins,
      Optional<FedLeg> before,
      double dividerPsi,
      List<FedLeg> all) {
    List<FedLeg> members = members(laid, inlet, begins, before, dividerPsi);
    all.addAll(members);
    FedLeg leg = members.stream().min(Comparator.comparingDouble(FedLeg::outletPsi)).orElseThrow();
    double riseFt = leg.job.run().riseFt();
    Begins ends =
        new Begins(begins.elevationFt() + riseFt, begins.distanceFt() + leg.line().laidFt());
    for (int i = 0; i < laid.behind().size(); i++) {
      Inlet end = new Inlet(leg.outletPsi(), leg.closedAtEndPsi());
      Inlet next = laid.divider().orElseThrow().feeds(i, end);
      double takenPsi = end.flowingPsi() - next.flowingPsi();
      feed(laid.behind().get(i), next, ends, Optional.of(leg), takenPsi, all);
    }
  }

  /** Lines that meet where they end, or the one there is. */
  private static List<FedLeg> members(
      LaidLeg laid, Inlet inlet, Begins begins, Optional<FedLeg> before, double dividerPsi) {
    List<LaidLeg> members = laid.members();
    Optional<String> meeting = Optional.of(laid.asked().name()).filter(name -> members.size() > 1);
    List<FedLeg> fed = new ArrayList<>();
    for (LaidLeg member : members) {
      Job job = member.job().withSupply(Optional.of(inlet));
      Hydraulics water = PlanHydraulics.of(job, member.way().line());
      fed.add(new FedLeg(member, job, water, begins, before, dividerPsi, meeting));
    }
    return fed;
  }
}
