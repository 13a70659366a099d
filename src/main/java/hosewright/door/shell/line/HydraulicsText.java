package hosewright.door.shell.line;

import hosewright.csv.PlainNumber;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.OtherCoefficient;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.WayThrough;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.PressureDrawing;
import java.util.Locale;
import java.util.Optional;

/** The hydraulics of a plan as a person reads them. */
final class HydraulicsText {
  private static final double LEAST_TOLD_PSI = 0.05;

  private final LinePlan plan;
  private final Hydraulics hydraulics;
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
    Optional<Leg> attack = plan.layout().branchLeg();
    prose.line(
        (attack.isPresent() ? "Friction in the supply hose is by " : "Friction in the hose is by ")
            + hydraulics.frictionBasis()
            + ".");
    attack.ifPresent(lines -> prose.line(behindTheWye(lines)));
    hydraulics.otherCoefficients().forEach(other -> prose.line(sentence(other)));
    prose.line(
        String.format(
            Locale.ROOT,
            "Water runs at %s%s; full of water all the hose weighs %s (%s empty), and it fills in"
                + " %.1f minutes.",
            units.speed().of(hydraulics.velocityFtPerS()),
            attack.isPresent() ? " where it is fastest" : "",
            units.weight().of(hydraulics.chargedWeightLb()),
            units.weight().of(hydraulics.emptyWeightLb()),
            hydraulics.fillMinutes()));
    hydraulics
        .reactionLbf()
        .ifPresent(
            lbf ->
                prose.line(
                    (attack.isPresent() ? "Each nozzle" : "The nozzle")
                        + " pushes back with "
                        + units.force().of(lbf)
                        + "."));
    prose.line(surge());
    if (plan.layout().branched()) {
      WayThrough.all(plan.layout()).forEach(way -> prose.block(along(way)));
    } else {
      prose.block(
          StationTable.of(plan.layout().run(), hydraulics.profile(), screen, units)
              + "\n"
              + PressureDrawing.text(plan, units, screen.width()));
    }
    return prose.toString().replaceFirst("^\n+", "");
  }

  /** How pressure falls on one of several ways to an appliance. */
  private String along(WayThrough way) {
    return "The way through "
        + way.words()
        + "\n"
        + StationTable.of(way.run(plan.layout()), way.profile(), screen, units)
        + "\n"
        + PressureDrawing.text(plan, way, units, screen.width());
  }

  private String behindTheWye(Leg attack) {
    return String.format(
        Locale.ROOT,
        "Behind the wye each of %d lines carries %s and begins with %s; its hose loses %s, by %s.",
        attack.lines(),
        units.flow().of(attack.water().flowGpm()),
        units.pressure().of(attack.water().inletPsi()),
        units.pressure().of(attack.water().friction().lossPsi()),
        attack.water().friction().basis());
  }

  /** One figure where the hose's wave speed is known, else the two estimates for its kind. */
  private String surge() {
    String low = units.pressure().of(hydraulics.surgeLowPsi());
    String high = units.pressure().of(hydraulics.surgeHighPsi());
    return low.equals(high)
        ? "A valve slammed shut can raise the pressure by as much as " + high + ": close slowly."
        : "A valve slammed shut raises the pressure by "
            + low
            + " by the low and "
            + high
            + " by the high estimate for this hose, whose stiffness is not known: close slowly.";
  }

  private String balance() {
    Table table = Table.of("", units.pressure().unit()).numbers(1);
    Optional<Leg> attack = plan.layout().branchLeg();
    table.row(
        attack.isPresent() ? "needed at each appliance" : "needed at the appliance",
        psi(plan.needPsi()));
    if (attack.isPresent()) {
      double attackPsi = attack.get().water().friction().lossPsi();
      table.row("lost in each attack line", psi(attackPsi));
      table.row("lost in the supply hose", psi(hydraulics.frictionLossPsi() - attackPsi));
    } else {
      table.row("lost in hose", psi(hydraulics.frictionLossPsi()));
    }
    table.row("lost in fittings, by their bores", psi(hydraulics.adapterLossPsi()));
    table.row("lost in appliances, as stated", psi(hydraulics.applianceLossPsi()));
    table.row("lost to rise", psi(hydraulics.elevationLossPsi()));
    hydraulics.pumpedPsi().ifPresent(added -> table.row("added by pumps on the way", psi(-added)));
    plan.hydraulics()
        .decidingSummit(plan.needPsi())
        .ifPresent(
            summit ->
                table.row(
                    "kept over the summit, beyond that",
                    psi(hydraulics.requiredSourcePsi() - plan.needPsi() - hydraulics.lostPsi())));
    double heldPsi = hydraulics.requiredSourcePsi() - plan.needPsi() - hydraulics.lostPsi();
    if (hydraulics.pumpedPsi().isPresent() && heldPsi > LEAST_TOLD_PSI) {
      table.row("kept at a pump's intake or elsewhere, beyond that", psi(heldPsi));
    }
    boolean draws = plan.layout().draws();
    table.row(
        draws ? "behind the strainer, at the least" : "the source must hold",
        psi(hydraulics.requiredSourcePsi()));
    hydraulics
        .sourcePsi()
        .ifPresent(
            source -> table.row(draws ? "behind the strainer" : "the source gives", psi(source)));
    table.row("arrives", psi(hydraulics.deliveredPsi()));
    return table.on(screen);
  }

  private String sentence(OtherCoefficient other) {
    return String.format(
        Locale.ROOT,
        "With C = %s (%s; %s) the hose would lose %s, and the source would have to hold %s.",
        PlainNumber.of(other.c()),
        other.howSure(),
        other.source(),
        units.pressure().of(other.frictionLossPsi()),
        units.pressure().of(other.requiredSourcePsi()));
  }

  private String psi(double psi) {
    return units.pressure().figure(psi);
  }
}
