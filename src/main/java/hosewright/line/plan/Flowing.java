package hosewright.line.plan;

import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.working.Working;
import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.check.PressureChecks;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Layout;
import hosewright.line.water.Outflow;
import hosewright.line.water.PlanHydraulics;
import java.util.List;

/**
 * What a source brings through a line.
 *
 * <p>The appliance acts as a fixed opening through the flow and pressure the job states, as a
 * smooth bore where its tip is stated, as an open end where it needs no pressure.
 *
 * @param arrives what comes out at the end
 * @param limitedBy what ends the flow where it does, in one sentence
 * @param safe every check passed or only warned at that flow, and water arrives
 * @param checks pressure checks at that flow
 * @param layout the line, with what each leg does at that flow
 * @param profile pressure at every station, flowing and shut
 * @param working each formula with its numbers put in, for a check by hand
 */
public record Flowing(
    Arrives arrives,
    String limitedBy,
    boolean safe,
    List<Check> checks,
    Layout layout,
    List<Station> profile,
    List<Working.Step> working) {

  /**
   * What comes out at the end.
   *
   * @param flowGpm flow that arrives at all appliances together, gpm; 0 when none does
   * @param deliveredPsi pressure at the appliance at that flow, psi
   * @param sourcePsi pressure the source gives at that flow, psi
   */
  public record Arrives(double flowGpm, double deliveredPsi, double sourcePsi) {}

  static Flowing of(Job job, Assembly line) {
    List<LineElement> elements = PlanHydraulics.elements(job, line);
    Demand demand = Outflow.ofAll(job);
    Arrival arrival = LineHydraulics.arriving(elements, job.supply().orElseThrow(), demand);
    List<Check> checks = checks(job, line, arrival);
    return new Flowing(
        new Arrives(
            arrival.flowGpm(), arrival.pressures().deliveredPsi(), arrival.pressures().sourcePsi()),
        arrival.limitedBy(),
        arrival.flows()
            && checks.stream().noneMatch(check -> check.outcome() == Check.Outcome.FAIL),
        checks,
        layout(job, line, arrival),
        PlanHydraulics.stations(arrival.profile()),
        Working.of(arrival, demand));
  }

  private static Layout layout(Job job, Assembly line, Arrival arrival) {
    Job atThatFlow =
        arrival.flows() && arrival.flowGpm() > 0
            ? job.flowing(arrival.flowGpm(), arrival.pressures().deliveredPsi())
            : job;
    return LayoutWriter.of(atThatFlow, line, PlanHydraulics.of(atThatFlow, line));
  }

  /** The checks on the line at the flow that arrives; none where nothing does. */
  private static List<Check> checks(Job job, Assembly line, Arrival arrival) {
    if (!arrival.flows() || arrival.flowGpm() == 0) {
      return List.of();
    }
    Job atThatFlow = job.flowing(arrival.flowGpm(), arrival.pressures().deliveredPsi());
    return PressureChecks.of(atThatFlow, line, PlanHydraulics.of(atThatFlow, line)).stream()
        .filter(check -> check.id() != CheckId.DELIVERED_PRESSURE)
        .toList();
  }
}
