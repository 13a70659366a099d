package hosewright.job.layout;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.suction.Drafting;
import hosewright.job.Ends;
import hosewright.job.Job;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Water that divides and meets again: legs from one source to appliances.
 *
 * @param legs each stands after the leg it begins behind; those that meet at one place are one
 * @param pumps what pumps the water on, by the name of the leg that ends there
 * @param boosters pumps to be bought, likewise
 * @param asNeeded names of legs that may have any number of pumps to be bought on their way
 */
public record LayoutJob(
    List<LegJob> legs,
    Map<String, LayoutPump> pumps,
    Map<String, LayoutBooster> boosters,
    List<String> asNeeded) {
  /** So that no leg has the name of another's part. */
  private static final String PART = ", part ";

  public LayoutJob {
    legs = List.copyOf(legs);
    pumps = Map.copyOf(pumps);
    boosters = Map.copyOf(boosters);
    asNeeded = List.copyOf(asNeeded);
  }

  /** With no pump to be bought. */
  public LayoutJob(List<LegJob> legs, Map<String, LayoutPump> pumps) {
    this(legs, pumps, Map.of(), List.of());
  }

  /** The pump to be bought where a leg ends, if one is to stand there. */
  public Optional<LayoutBooster> boosterBehind(LegJob leg) {
    return Optional.ofNullable(boosters.get(leg.name()));
  }

  /**
   * This layout with pumps on the way of a leg, which becomes so many legs one behind another; the
   * last keeps its name.
   *
   * @param places where each stands, nearest to the leg's beginning first
   */
  public LayoutJob boosted(String name, List<BoosterWish.Place> places) {
    List<LegJob> parted = new ArrayList<>();
    Map<String, LayoutBooster> bought = new HashMap<>(boosters);
    for (LegJob leg : legs) {
      if (leg.name().equals(name)) {
        parted.addAll(parts(leg, places, bought));
      } else {
        parted.add(leg);
      }
    }
    return new LayoutJob(
        parted, pumps, bought, asNeeded.stream().filter(leg -> !leg.equals(name)).toList());
  }

  private static List<LegJob> parts(
      LegJob leg, List<BoosterWish.Place> places, Map<String, LayoutBooster> bought) {
    List<LegJob> parts = new ArrayList<>();
    Optional<String> behind = leg.behind();
    double fromFt = 0;
    for (BoosterWish.Place place : places) {
      String part = leg.name() + PART + (parts.size() + 1);
      Job job = leg.job();
      parts.add(
          new LegJob(
              part,
              behind,
              1,
              job.along(job.run().part(place.atFt() - fromFt))
                  .wanting(List.of())
                  .flowing(job.flowGpm(), RelayPump.LEAST_INTAKE_PSI),
              false));
      bought.put(
          part,
          new LayoutBooster(
              "booster " + parts.size() + " on " + leg.name(),
              place.item(),
              RelayPump.LEAST_INTAKE_PSI,
              OptionalDouble.empty()));
      behind = Optional.of(part);
      fromFt = place.atFt();
    }
    double restFt = leg.job().run().lengthFt() - fromFt;
    parts.add(
        new LegJob(
            leg.name(),
            behind,
            leg.copies(),
            places.isEmpty() ? leg.job() : leg.job().along(leg.job().run().part(restFt)),
            leg.last()));
    return parts;
  }

  /** The buyer's pump where a leg ends, if one stands there. */
  public Optional<LayoutPump> pumpBehind(LegJob leg) {
    return Optional.ofNullable(pumps.get(leg.name()));
  }

  /** How open water is drawn, where the first leg draws it. */
  public Optional<Drafting> drafting() {
    return pumpBehind(legs.get(0)).flatMap(LayoutPump::drafting);
  }

  /**
   * This layout with its suction leg behind a strainer.
   *
   * @param strainer its item number
   * @param end the end that the leg begins at
   * @param takenPsi what it takes at the flow, psi
   */
  public LayoutJob drawingBy(String strainer, End end, double takenPsi) {
    List<LegJob> behind = new ArrayList<>(legs);
    LegJob first = legs.get(0);
    Job job = first.job();
    List<String> wanted = new ArrayList<>(job.accessories());
    wanted.removeIf(LayoutJob::asksForStrainer);
    wanted.add(strainer);
    behind.set(
        0,
        new LegJob(
            first.name(),
            first.behind(),
            first.copies(),
            job.between(new Ends(job.source(), end, job.appliance(), job.to()))
                .withSupply(Optional.of(new Inlet(-takenPsi, 0)))
                .wanting(wanted),
            first.last()));
    return new LayoutJob(behind, pumps, boosters, asNeeded);
  }

  /** Whether a word asks for what stands at the water's end of a suction line. */
  public static boolean asksForStrainer(String wanted) {
    return wanted.strip().replace('-', ' ').toLowerCase(Locale.ROOT).matches("strainer|foot valve");
  }

  /** The buyer's pump where a leg begins, if one stands there. */
  public Optional<LayoutPump> pumpBefore(LegJob leg) {
    return leg.behind().map(pumps::get);
  }

  /** What holds for all legs: heading, source, service, terms. */
  public Job whole() {
    return legs.get(0).job();
  }

  /** Every leg by itself, also those that meet others. */
  public List<LegJob> stretches() {
    return legs.stream().flatMap(leg -> leg.members().stream()).toList();
  }

  /** Legs that begin at the source. */
  public List<LegJob> atSource() {
    return legs.stream().filter(leg -> leg.behind().isEmpty()).toList();
  }

  /** Legs that begin where a leg ends. */
  public List<LegJob> behind(LegJob leg) {
    return legs.stream().filter(one -> one.behind().equals(Optional.of(leg.name()))).toList();
  }

  /** Flow of everything together, US gal/min. */
  public double flowGpm() {
    return atSource().stream().mapToDouble(LegJob::flowGpm).sum();
  }

  public Optional<Supply> supply() {
    return whole().supply();
  }

  /** What the source gives while everything flows, and shut; empty where it is not stated. */
  public Optional<Inlet> fed() {
    return supply().map(source -> new Inlet(source.pressurePsi(flowGpm()), source.closedPsi()));
  }

  /** This layout with its prices of a day, where it names none. */
  public LayoutJob on(LocalDate day) {
    return new LayoutJob(legs.stream().map(leg -> leg.on(day)).toList(), pumps, boosters, asNeeded);
  }
}
