package hosewright.line.water;

import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.hydraulics.Station;
import hosewright.hydraulics.Supply;
import hosewright.job.Job;
import hosewright.job.question.SourceKind;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import java.util.List;

/**
 * What a line does to the pressure where it begins, psi.
 *
 * @param lostPsi from its beginning to its end, the rise included
 * @param peakPsi the most that any place on the way takes of it, so that none is under suction
 * @param bearsPsi the highest that all its parts stand there with nothing flowing; infinite where
 *     none is rated
 */
public record LegLevels(double lostPsi, double peakPsi, double bearsPsi) {
  private static final double HAIR = 1e-9;

  /**
   * @param job what a line is laid for, with the most that it is fed with where that is known
   */
  public static LegLevels of(Job job, Assembly line) {
    if (!job.service().isWater()) {
      return new LegLevels(0, 0, Double.POSITIVE_INFINITY);
    }
    List<LineElement> elements = PlanHydraulics.elements(job, line);
    List<Station> profile = LineHydraulics.profile(elements, job.flowGpm(), 0, 0);
    double lowestPsi = profile.stream().mapToDouble(Station::flowingPsi).min().orElseThrow();
    // What a source never puts on it, nothing need bear.
    double bearsPsi = job.supply().map(Supply::closedPsi).orElse(Double.POSITIVE_INFINITY);
    for (SeenPressure seen : SeenPressure.along(line, PlanHydraulics.stations(profile))) {
      bearsPsi = Math.min(bearsPsi, carriedPsi(job, seen.part()) - seen.highestPsi());
    }
    // What draws is under suction, and made for it.
    double peakPsi = job.source() == SourceKind.OPEN_WATER ? Double.NEGATIVE_INFINITY : -lowestPsi;
    return new LegLevels(-profile.get(profile.size() - 1).flowingPsi(), peakPsi, bearsPsi);
  }

  private static double carriedPsi(Job job, Placed part) {
    return part.isHose()
        ? BornePressure.hosePsi(job, part.rating())
        : part.rating()
            .workingPsiAt(job.service().temperatureOrUsualF())
            .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * What must stand where the line begins, psi.
   *
   * @param atEndPsi what must arrive where it ends
   */
  public double neededPsi(double atEndPsi) {
    return Math.max(atEndPsi + lostPsi, peakPsi);
  }

  /** Whether it takes no more and stands no less. */
  public boolean asGoodAs(LegLevels other) {
    return lostPsi <= other.lostPsi + HAIR
        && peakPsi <= other.peakPsi + HAIR
        && bearsPsi >= other.bearsPsi - HAIR;
  }
}
