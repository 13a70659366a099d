package hosewright.door.shell.line;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.OfLeg;
import hosewright.line.model.LinePlan.Unthrottled;
import hosewright.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** What comes to each appliance of a layout, as a person reads it. */
final class AppliancesText {
  private AppliancesText() {}

  static String of(LinePlan plan, Screen screen, UnitSystem units) {
    String flow = units.flow().unit();
    String psi = units.pressure().unit();
    boolean sought = plan.asked().ofLegs().stream().anyMatch(one -> one.unthrottled().isPresent());
    List<String> heads =
        new ArrayList<>(
            List.of("leg", "planned, " + flow, "needs, " + psi, "throttled by, " + psi));
    if (sought) {
      heads.addAll(List.of("all open, " + flow, "then, " + psi, "alone, " + flow, "then, " + psi));
    }
    Table table =
        Table.of(heads.toArray(String[]::new))
            .numbers(sought ? new int[] {1, 2, 3, 4, 5, 6, 7} : new int[] {1, 2, 3});
    plan.asked().ofLegs().forEach(one -> table.row(row(one, units).toArray()));
    return table.on(screen);
  }

  private static List<Object> row(OfLeg one, UnitSystem units) {
    List<Object> row =
        new ArrayList<>(
            List.of(
                one.leg(),
                units.flow().figure(one.flowGpm()),
                units.pressure().figure(one.needPsi()),
                units.pressure().figure(one.throttlePsi())));
    if (one.unthrottled().isPresent()) {
      Unthrottled open = one.unthrottled().get();
      row.add(units.flow().figure(open.flowGpm()));
      row.add(units.pressure().figure(open.psi()));
      row.add(units.flow().figure(open.aloneGpm()));
      row.add(units.pressure().figure(open.alonePsi()));
    }
    return row;
  }
}
