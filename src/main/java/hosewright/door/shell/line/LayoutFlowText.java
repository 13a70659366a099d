package hosewright.door.shell.line;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.line.layout.LayoutFlow;
import hosewright.measure.UnitSystem;

/** What a source brings through a layout, as a person reads it. */
final class LayoutFlowText {
  private LayoutFlowText() {}

  static String of(LayoutFlow flow, Screen screen, UnitSystem units) {
    Prose prose = new Prose(screen);
    prose.line(
        units.flow().of(flow.flowGpm())
            + " flow with everything open; the source gives "
            + units.pressure().of(flow.sourcePsi())
            + " at that flow.");
    if (!flow.holds()) {
      prose.line("NOT SAFE as it is.");
    }
    prose.block(appliances(flow, units).on(screen));
    if (!flow.pumps().isEmpty()) {
      prose.block(pumps(flow, units).on(screen));
    }
    for (LayoutFlow.AtPump pump : flow.pumps()) {
      if (pump.shortOfIntakePsi() > 0) {
        prose.line(
            "  ",
            pump.pump()
                + " would draw its intake "
                + units.pressure().of(pump.shortOfIntakePsi())
                + " below what it must keep: throttle it, or the appliances.");
      }
      if (pump.atItsMost()) {
        prose.line(
            "  ", pump.pump() + " is at the end of its curve: more may flow, and nobody says.");
      }
    }
    prose.line("Local codes come first; have a qualified person check this before water flows.");
    return prose.toString();
  }

  private static Table appliances(LayoutFlow flow, UnitSystem units) {
    Table table =
        Table.of(
                "appliance of",
                "like it",
                units.flow().unit() + " each",
                units.pressure().unit(),
                "alone, " + units.flow().unit(),
                "alone, " + units.pressure().unit())
            .numbers(1, 2, 3, 4, 5);
    for (LayoutFlow.AtAppliance one : flow.appliances()) {
      table.row(
          one.leg(),
          one.copies(),
          units.flow().figure(one.flowGpm()),
          units.pressure().figure(one.deliveredPsi()),
          units.flow().figure(one.aloneGpm()),
          units.pressure().figure(one.alonePsi()));
    }
    return table;
  }

  private static Table pumps(LayoutFlow flow, UnitSystem units) {
    Table table =
        Table.of(
                "pump",
                units.flow().unit(),
                "takes in, " + units.pressure().unit(),
                "gives, " + units.pressure().unit(),
                "relief")
            .numbers(1, 2, 3);
    for (LayoutFlow.AtPump pump : flow.pumps()) {
      table.row(
          pump.pump(),
          units.flow().figure(pump.flowGpm()),
          units.pressure().figure(pump.intakePsi()),
          units.pressure().figure(pump.dischargePsi()),
          pump.relieved() ? "open" : "shut");
    }
    return table;
  }
}
