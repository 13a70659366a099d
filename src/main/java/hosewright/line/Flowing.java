package hosewright.line;

import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.LineHydraulics;
import hosewright.line.LineHydraulicsResult.Station;
import java.util.List;

/**
 * What a source brings through a line.
 *
 * <p>The appliance acts as a fixed opening through the flow and pressure the job states, as a
 * smooth bore where its tip is stated, as an open end where it needs no pressure.
 *
 * @param flowGpm flow that arrives, gpm; 0 when none does
 * @param deliveredPsi pressure at the appliance at that flow, psi
 * @param sourcePsi pressure the source gives at that flow, psi
 * @param limitedBy what ends the flow where it does, in one sentence
 * @param profile pressure at every station, flowing and shut
 */
public record Flowing(
    double sizeIn,
    double couplingSizeIn,
    String hoseSeries,
    int lines,
    double laidFt,
    double flowGpm,
    double deliveredPsi,
    double sourcePsi,
    String limitedBy,
    List<Station> profile) {

  static Flowing of(Job job, Assembly line) {
    Arrival arrival =
        LineHydraulics.arriving(
            PlanHydraulics.elements(job, line), job.supply().orElseThrow(), demand(job));
    HoseLine hose = line.frame().hose();
    return new Flowing(
        hose.sizeIn(),
        hose.couplingSizeIn(),
        hose.series(),
        line.frame().lines(),
        line.lay().lengthFt(),
        arrival.flowGpm(),
        arrival.deliveredPsi(),
        arrival.sourcePsi(),
        arrival.limitedBy(),
        arrival.profile().stream()
            .map(
                station ->
                    new Station(
                        station.name(),
                        station.distanceFt(),
                        station.elevationFt(),
                        station.flowingPsi(),
                        station.closedPsi()))
            .toList());
  }

  /** What stands at the end of a job's line. */
  static Demand demand(Job job) {
    if (job.tipIn().isPresent()) {
      return new Demand.SmoothBore(job.tipIn().getAsDouble());
    }
    return job.needPsi() > 0
        ? new Demand.FlowAndPressure(job.flowGpm(), job.needPsi())
        : new Demand.OpenEnd(job.to().sizeIn(), 0);
  }
}
