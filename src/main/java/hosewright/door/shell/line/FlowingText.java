package hosewright.door.shell.line;

import hosewright.csv.PlainNumber;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.line.model.Check;
import hosewright.line.model.Leg;
import hosewright.line.plan.Flowing;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.PressureDrawing;
import hosewright.paper.drawing.PressureDrawing.LimitLine;
import java.util.List;

/** What a source brings through a line, as a person reads it. */
final class FlowingText {
  private FlowingText() {}

  static String of(Flowing flow, Screen screen, UnitSystem units) {
    Prose prose = new Prose(screen);
    Flowing.Arrives arrives = flow.arrives();
    Leg first = flow.layout().firstHoseLeg().orElseThrow();
    prose.line(
        String.format(
            "%s arrive at %s through %s%s.",
            units.flow().of(arrives.flowGpm()),
            units.pressure().of(arrives.deliveredPsi()),
            hose(first, units),
            first.lines() > 1 ? ", " + first.lines() + " lines side by side" : ""));
    flow.layout()
        .branchLeg()
        .ifPresent(
            leg ->
                prose.line(
                    String.format(
                        "Behind the wye %d lines of %s bring %s each.",
                        leg.lines(), hose(leg, units), units.flow().of(leg.water().flowGpm()))));
    prose.line("The source gives " + units.pressure().of(arrives.sourcePsi()) + " at that flow.");
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
        StationTable.of(flow.layout().run(), flow.profile(), screen, units)
            + "\n"
            + PressureDrawing.text(
                flow.profile(),
                List.of(new LimitLine('-', "arrives at the appliance", arrives.deliveredPsi())),
                PressureDrawing.leastWorkingPsi(flow.checks()),
                units,
                screen.width()));
    prose.line("Local codes come first; have a qualified person check this before water flows.");
    return prose.toString();
  }

  private static String hose(Leg leg, UnitSystem units) {
    Leg.Hose hose = leg.hose().orElseThrow();
    return String.format(
        "%s of %s in hose (%s)",
        units.length().of(hose.laidFt()), PlainNumber.of(hose.sizeIn()), hose.series());
  }
}
