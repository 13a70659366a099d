package hosewright.paper.quote;

import hosewright.line.model.Hydraulics.Station;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names stations in a table: of like sections the first by its whole name. */
final class StationNames {
  private static final Pattern NUMBERED = Pattern.compile("(.*) (\\d+)");

  private StationNames() {}

  static String shown(List<Station> stations, int at) {
    Matcher name = NUMBERED.matcher(stations.get(at).name());
    if (at == 0 || !name.matches()) {
      return stations.get(at).name();
    }
    Matcher before = NUMBERED.matcher(stations.get(at - 1).name());
    return before.matches() && before.group(1).equals(name.group(1))
        ? "the same, " + name.group(2)
        : stations.get(at).name();
  }
}
