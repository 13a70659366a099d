package hosewright.door.shell.line;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.line.model.Hydraulics.Place;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.measure.UnitSystem;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Pressure at every station, flowing and with the nozzle shut. */
final class StationTable {
  private StationTable() {}

  static String of(List<Part> run, List<Station> profile, Screen screen, UnitSystem units) {
    Table table =
        Table.of(
                "at the end of",
                "hose, " + units.length().unit(),
                "height, " + units.length().unit(),
                "flowing, " + units.pressure().unit(),
                "shut, " + units.pressure().unit())
            .numbers(1, 2, 3, 4);
    List<String> names = names(run);
    boolean known =
        names.size() == profile.stream().filter(at -> at.place() == Place.AT_END).count();
    Iterator<String> next = names.iterator();
    for (Station at : profile) {
      boolean end = at.place() == Place.AT_END;
      table.row(
          known && end ? next.next() : end ? at.name() : "the ground turns",
          units.length().figure(at.distanceFt()),
          units.length().figure(at.elevationFt()),
          units.pressure().figure(at.flowingPsi()),
          units.pressure().figure(at.closedPsi()));
    }
    return table.on(screen);
  }

  /** Item numbers, which are shorter than what they stand for; sections are counted. */
  private static List<String> names(List<Part> run) {
    List<String> names = new ArrayList<>(List.of("the source"));
    for (Part part : run) {
      if (part.role() == Role.SOURCE || part.role() == Role.APPLIANCE) {
        continue;
      }
      String own = part.isHose() ? "the customer's own hose" : part.description();
      String name = part.item().orElse(part.isBuyers() ? own : "part to be sourced");
      int stations = part.isHose() ? part.count() : 1;
      for (int i = 1; i <= stations; i++) {
        names.add(stations == 1 ? name : name + ", " + i + " of " + stations);
      }
    }
    return names;
  }
}
