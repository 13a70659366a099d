package hosewright.line.water;

import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * The pressures one part of a line sees between its two ends.
 *
 * @param highestPsi flowing or shut, whichever is higher, psi
 * @param lowestPsi flowing or shut, whichever is lower, psi
 */
public record SeenPressure(Placed part, double highestPsi, double lowestPsi) {

  /** One for each part between source and appliance, in order. */
  public static List<SeenPressure> along(Assembly line, List<Station> profile) {
    List<SeenPressure> seen = new ArrayList<>();
    int station = 0;
    for (Placed part : line.parts()) {
      if (part.role() == Role.SOURCE || part.role() == Role.APPLIANCE) {
        continue;
      }
      List<Station> passed = profile.subList(station, station + part.count() + 1);
      double highest = Double.NEGATIVE_INFINITY;
      double lowest = Double.POSITIVE_INFINITY;
      for (Station at : passed) {
        highest = Math.max(highest, Math.max(at.flowingPsi(), at.closedPsi()));
        lowest = Math.min(lowest, Math.min(at.flowingPsi(), at.closedPsi()));
      }
      seen.add(new SeenPressure(part, highest, lowest));
      station += part.count();
    }
    return seen;
  }
}
