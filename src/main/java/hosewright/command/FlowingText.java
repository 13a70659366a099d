package hosewright.command;

import hosewright.line.Check;
import hosewright.line.Flowing;
import hosewright.measure.UnitSystem;
import hosewright.report.PressureDrawing;
import hosewright.report.PressureDrawing.LimitLine;
import hosewright.shell.Screen;
import java.util.List;

/** What a source brings through a line, as a person reads it. */
final class FlowingText {
  private FlowingText() {}

  static String of(Flowing flow, Screen screen, UnitSystem units) {
    Prose prose = new Prose(screen);
    prose.line(
        String.format(
            "%s arrive at %s through %s of %s in hose (%s)%s.",
            units.flow().of(flow.flowGpm()),
            units.pressure().of(flow.deliveredPsi()),
            units.length().of(flow.laidFt()),
            Prose.plain(flow.sizeIn()),
            flow.hoseSeries(),
            flow.lines() > 1 ? ", " + flow.lines() + " lines side by side" : ""));
    flow.layout()
        .attackLines()
        .ifPresent(
            attack ->
                prose.line(
                    String.format(
                        "Behind the wye %d lines of %s of %s in hose (%s) bring %s each.",
                        attack.lines(),
                        units.length().of(attack.laidFt()),
                        Prose.plain(attack.sizeIn()),
                        attack.hoseSeries(),
                        units.flow().of(attack.flowGpm()))));
    prose.line("The source gives " + units.pressure().of(flow.sourcePsi()) + " at that flow.");
    prose.line("Limited by " + units.restated(flow.limitedBy()) + ".");
    if (!flow.safe()) {
      prose.line("NOT SAFE as it is.");
    }
    for (Check check : flow.checks()) {
      if (check.outcome() != Check.Outcome.PASS) {
        prose.line(
            "  ", check.outcome() + " " + check.name() + ": " + units.restated(check.note()) + ".");
      }
    }
    prose.block(
        StationTable.of(flow.run(), flow.profile(), screen, units)
            + "\n"
            + PressureDrawing.text(
                flow.profile(),
                List.of(new LimitLine('-', "arrives at the appliance", flow.deliveredPsi())),
                PressureDrawing.leastWorkingPsi(flow.checks()),
                units,
                screen.width()));
    prose.line("Local codes come first; have a qualified person check this before water flows.");
    return prose.toString();
  }
}
