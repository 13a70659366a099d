package hosewright.job.layout;

import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.Supply;
import hosewright.job.Job;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Water that divides: legs from one source to an appliance each.
 *
 * @param legs each stands after the leg it begins behind
 * @param pumps what pumps the water on, by the name of the leg that ends there
 */
public record LayoutJob(List<LegJob> legs, Map<String, LayoutPump> pumps) {
  public LayoutJob {
    legs = List.copyOf(legs);
    pumps = Map.copyOf(pumps);
  }

  /** The buyer's pump where a leg ends, if one stands there. */
  public Optional<LayoutPump> pumpBehind(LegJob leg) {
    return Optional.ofNullable(pumps.get(leg.name()));
  }

  /** The buyer's pump where a leg begins, if one stands there. */
  public Optional<LayoutPump> pumpBefore(LegJob leg) {
    return leg.behind().map(pumps::get);
  }

  /** What holds for all legs: heading, source, service, terms. */
  public Job whole() {
    return legs.get(0).job();
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
    return new LayoutJob(
        legs.stream()
            .map(
                leg ->
                    new LegJob(
                        leg.name(), leg.behind(), leg.copies(), leg.job().on(day), leg.last()))
            .toList(),
        pumps);
  }
}
