package hosewright.line.water;

import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.model.Hydraulics.Place;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pressures one part of a line sees between its two ends.
 *
 * @param highest where it sees most, flowing or shut
 * @param lowest where it sees least, flowing or shut
 */
public record SeenPressure(Placed part, Station highest, Station lowest) {

  /** One for each part between source and appliance, in order. */
  public static List<SeenPressure> along(Assembly line, List<Station> profile) {
    List<SeenPressure> seen = new ArrayList<>();
    int station = 0;
    for (Placed part : line.parts()) {
      if (part.role() == Role.SOURCE || part.role() == Role.APPLIANCE) {
        continue;
      }
      int last = station;
      for (int ends = 0; ends < part.count(); ends++) {
        do {
          last++;
        } while (profile.get(last).place() == Place.WITHIN);
      }
      seen.add(of(part, profile.subList(station, last + 1)));
      station = last;
    }
    return seen;
  }

  private static SeenPressure of(Placed part, List<Station> passed) {
    return new SeenPressure(
        part,
        passed.stream().max(Comparator.comparingDouble(Station::highestPsi)).orElseThrow(),
        passed.stream().min(Comparator.comparingDouble(Station::lowestPsi)).orElseThrow());
  }

  public double highestPsi() {
    return highest.highestPsi();
  }

  public double lowestPsi() {
    return lowest.lowestPsi();
  }
}
