package hosewright.command;

import hosewright.line.LineHydraulicsResult.Station;
import hosewright.line.LinePlan.RunPart;
import hosewright.measure.UnitSystem;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.util.ArrayList;
import java.util.List;

/** Pressure at every station, flowing and with the nozzle shut. */
final class StationTable {
  private StationTable() {}

  static String of(List<RunPart> run, List<Station> profile, Screen screen, UnitSystem units) {
    Table table =
        Table.of(
                "at the end of",
                "hose, " + units.length().unit(),
                "height, " + units.length().unit(),
                "flowing, " + units.pressure().unit(),
                "shut, " + units.pressure().unit())
            .numbers(1, 2, 3, 4);
    List<String> names = names(run);
    for (int i = 0; i < profile.size(); i++) {
      Station at = profile.get(i);
      table.row(
          names.size() == profile.size() ? names.get(i) : at.name(),
          units.length().figure(at.distanceFt()),
          units.length().figure(at.elevationFt()),
          units.pressure().figure(at.flowingPsi()),
          units.pressure().figure(at.closedPsi()));
    }
    return table.on(screen);
  }

  /** Item numbers, which are shorter than what they stand for; sections are counted. */
  private static List<String> names(List<RunPart> run) {
    List<String> names = new ArrayList<>(List.of("the source"));
    for (RunPart part : run) {
      boolean owned = part.upstream().isEmpty() || part.downstream().isEmpty();
      for (int i = 1; i <= part.count() && !owned; i++) {
        String name = part.item().isEmpty() ? "part to be sourced" : part.item();
        names.add(part.count() == 1 ? name : name + ", " + i + " of " + part.count());
      }
    }
    return names;
  }
}
