package hosewright.command;

import hosewright.line.LineHydraulicsResult;
import hosewright.line.LineHydraulicsResult.OtherCoefficient;
import hosewright.line.LinePlan;
import hosewright.measure.UnitSystem;
import hosewright.report.PressureDrawing;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.util.Locale;

/** The hydraulics of a plan as a person reads them. */
final class HydraulicsText {
  private final LinePlan plan;
  private final LineHydraulicsResult hydraulics;
  private final Screen screen;
  private final UnitSystem units;

  HydraulicsText(LinePlan plan, Screen screen, UnitSystem units) {
    this.plan = plan;
    this.hydraulics = plan.hydraulics();
    this.screen = screen;
    this.units = units;
  }

  String title() {
    return "Pressure at " + units.flow().of(plan.flowGpm());
  }

  /** Where the pressure goes, what it rests on, and how it falls along the line. */
  String body() {
    Prose prose = new Prose(screen);
    prose.block(balance());
    prose.line("Friction in the hose is by " + hydraulics.frictionBasis() + ".");
    hydraulics.otherCoefficients().forEach(other -> prose.line(sentence(other)));
    prose.line(
        String.format(
            Locale.ROOT,
            "Water runs at %s; full of water the hose weighs %s (%s empty) and fills in %.1f"
                + " minutes.",
            units.speed().of(hydraulics.velocityFtPerS()),
            units.weight().of(hydraulics.chargedWeightLb()),
            units.weight().of(hydraulics.emptyWeightLb()),
            hydraulics.fillMinutes()));
    hydraulics
        .reactionLbf()
        .ifPresent(lbf -> prose.line("The nozzle pushes back with " + units.force().of(lbf) + "."));
    prose.line(
        "Shutting at once adds between "
            + units.pressure().of(hydraulics.surgeLowPsi())
            + " and "
            + units.pressure().of(hydraulics.surgeHighPsi())
            + ", an upper bound: close slowly.");
    prose.block(
        StationTable.of(plan.run(), hydraulics.profile(), screen, units)
            + "\n"
            + PressureDrawing.text(plan, units, screen.width()));
    return prose.toString().replaceFirst("^\n+", "");
  }

  private String balance() {
    Table table = Table.of("", units.pressure().unit()).numbers(1);
    table.row("needed at the appliance", psi(plan.needPsi()));
    table.row("lost in hose", psi(hydraulics.frictionLossPsi()));
    table.row("lost in adapters", psi(hydraulics.adapterLossPsi()));
    table.row("lost in valves, wyes and meters", psi(hydraulics.applianceLossPsi()));
    table.row("lost to rise", psi(hydraulics.elevationLossPsi()));
    table.row("the source must hold", psi(hydraulics.requiredSourcePsi()));
    hydraulics.sourcePsi().ifPresent(source -> table.row("the source gives", psi(source)));
    table.row("arrives", psi(hydraulics.deliveredPsi()));
    return table.on(screen);
  }

  private String sentence(OtherCoefficient other) {
    return String.format(
        Locale.ROOT,
        "With C = %s (%s; %s) the hose would lose %s, and the source would have to hold %s.",
        Prose.plain(other.c()),
        other.howSure(),
        other.source(),
        units.pressure().of(other.frictionLossPsi()),
        units.pressure().of(other.requiredSourcePsi()));
  }

  private String psi(double psi) {
    return units.pressure().figure(psi);
  }
}
