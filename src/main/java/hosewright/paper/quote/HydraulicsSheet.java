package hosewright.paper.quote;

import hosewright.hydraulics.law.Physical;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.FormulaRows;
import hosewright.paper.sheet.FormulaRows.Figure;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How pressure goes along the line, each formula live beside its inputs.
 *
 * <p>Every figure has a defined name and every formula is written with those names, so that an
 * engineer can read it, change the flow and see it move.
 */
final class HydraulicsSheet {
  static final int[] WIDTHS = {42, 12, 8, 13, 11, 12, 12, 12};

  /** Ends that differ by less lie level: what is left of them is rounding. */
  private static final double LEVEL_FT = 1e-6;

  private final Page page;
  private final FormulaRows rows;
  private final LinePlan plan;
  private final Hydraulics result;

  private final String title;

  HydraulicsSheet(Page page, Quote quote, Group group) {
    this.page = page;
    this.rows = new FormulaRows(page);
    this.plan = group.plan();
    this.title = "Hydraulics" + GroupWords.behind(quote, group);
    this.result = plan.hydraulics();
  }

  void write() {
    page.next();
    page.span(0, page.lastColumn(), title, Look.TITLE);
    if (!result.calculated()) {
      page.next();
      page.span(0, page.lastColumn(), "Pressures: " + result.frictionBasis() + ".", Look.TEXT);
      page.finishedBelow(1);
      return;
    }
    if (!plan.asked().ofLegs().isEmpty()) {
      new LegsTable(page, plan).write();
      new WaysTable(page, plan).write();
      page.finishedBelow(1);
      return;
    }
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Boxed cells are inputs and may be changed; everything else follows. Changing them does "
            + "not change what is sold.",
        Look.TEXT);
    inputs();
    pressures();
    forces();
    new ProfileTable(page, plan).write();
    page.finishedBelow(1);
  }

  private void inputs() {
    rows.section("Inputs");
    Leg supply = plan.layout().firstHoseLeg().orElseThrow();
    List<Figure> inputs = new ArrayList<>();
    inputs.add(Figure.input("Flow in all", plan.flowGpm(), "gpm", "flow_gpm"));
    inputs.add(Figure.input("Lines that share it evenly", supply.lines(), "", "parallel_lines"));
    inputs.add(Figure.input("Hose laid in one line", laidFt(supply), "ft", "laid_ft"));
    inputs.add(Figure.input("Friction coefficient C", coefficient(supply), "", "friction_c"));
    plan.layout().branchLeg().ifPresent(attack -> attackInputs(attack, inputs));
    inputs.add(Figure.input("Rise, source to appliance", riseFt(result), "ft", "rise_ft"));
    inputs.add(Figure.input("Pressure per foot of rise", psiPerFt(result), "psi/ft", "psi_per_ft"));
    inputs.add(Figure.input("Pressure needed at the appliance", plan.needPsi(), "psi", "need_psi"));
    inputs.add(
        result
            .sourcePsi()
            .map(psi -> Figure.input("Pressure at the source", psi, "psi", "source_psi"))
            .orElse(Figure.empty("Pressure at the source", "psi", "source_psi")));
    inputs.add(
        Figure.input(
            "Loss in appliances in the line", result.applianceLossPsi(), "psi", "appliance_psi"));
    inputs.add(
        Figure.input(
            "Source with the nozzle shut",
            result.profile().get(0).closedPsi(),
            "psi",
            "closed_source_psi"));
    rows.inPairs(inputs);
    rows.note(
        "C is psi per 100 ft at 100 gpm: "
            + basis(supply)
            + ". Without a pressure at the source the line gets what it requires. That pressure and"
            + " the loss in appliances do not follow the flow by themselves. Downhill the rise is"
            + " negative.");
  }

  private String basis(Leg supply) {
    return result.frictionBasis()
        + plan.layout()
            .branchLeg()
            .map(attack -> attack.water().friction().basis())
            .filter(basis -> !basis.equals(supply.water().friction().basis()))
            .map(basis -> "; of the attack lines: " + basis)
            .orElse("");
  }

  private static void attackInputs(Leg attack, List<Figure> inputs) {
    inputs.add(Figure.input("Attack lines behind the wye", attack.lines(), "", "attack_lines"));
    inputs.add(Figure.input("Hose laid in one attack line", laidFt(attack), "ft", "attack_ft"));
    inputs.add(
        Figure.input(
            "Friction coefficient C of the attack lines", coefficient(attack), "", "attack_c"));
  }

  private void pressures() {
    rows.section("Pressures");
    rows.formula("Flow in one line", "flow_gpm/parallel_lines", "gpm", "line_gpm", "");
    rows.formula(
        "Friction loss in the hose",
        "friction_c*(line_gpm/100)^2*laid_ft/100",
        "psi",
        "friction_psi",
        "C \u00d7 (gpm/100)\u00b2 \u00d7 (ft/100)");
    if (plan.layout().branchLeg().isPresent()) {
      rows.formula("Flow in one attack line", "flow_gpm/attack_lines", "gpm", "attack_gpm", "");
      rows.formula(
          "Friction loss in one attack line",
          "attack_c*(attack_gpm/100)^2*attack_ft/100",
          "psi",
          "attack_friction_psi",
          "as above; like lines side by side lose the same");
    }
    rows.formula(
        "Elevation loss", "rise_ft*psi_per_ft", "psi", "elevation_psi", "rise \u00d7 psi per foot");
    rows.formula(
        "Fitting loss",
        exact(result.adapterLossPsi()) + "*(flow_gpm/" + exact(plan.flowGpm()) + ")^2",
        "psi",
        "adapter_psi",
        "by the square of the flow, from what was planned");
    Optional<Station> summit = new SummitRows(rows, plan).write();
    String needed =
        "need_psi+friction_psi" + attack("+") + "+elevation_psi+adapter_psi+appliance_psi";
    rows.formula(
        "Required at the source",
        summit.isPresent() ? "MAX(" + needed + "," + SummitRows.REQUIRED + ")" : needed,
        "psi",
        "required_psi",
        summit.isPresent()
            ? "need plus every loss, or what the summit takes"
            : "need plus every loss");
    rows.formula(
        "At the source",
        "IF(ISNUMBER(source_psi),source_psi,required_psi)",
        "psi",
        "start_psi",
        "as given above, else as required");
    rows.formula(
        "Delivered pressure",
        "start_psi-friction_psi" + attack("-") + "-elevation_psi-adapter_psi-appliance_psi",
        "psi",
        "delivered_psi",
        "source less every loss");
    rows.formula(
        "Pressure margin",
        "delivered_psi-need_psi",
        "psi",
        "spare_psi",
        "below zero: the line falls short");
  }

  /** The attack lines' share of a sum of losses; nothing where there are none. */
  private String attack(String sign) {
    return plan.layout().branchLeg().isPresent() ? sign + "attack_friction_psi" : "";
  }

  private void forces() {
    rows.section("Velocity, force and weight");
    String flow = "*flow_gpm/" + exact(plan.flowGpm());
    List<Figure> figures = new ArrayList<>();
    figures.add(
        Figure.formula(
            "Velocity of the water",
            exact(result.velocityFtPerS()) + flow,
            "ft/s",
            "speed_ft_per_s"));
    figures.add(
        Figure.formula(
            "Time to fill",
            exact(result.fillMinutes()) + "*" + exact(plan.flowGpm()) + "/flow_gpm",
            "min",
            "fill_min"));
    figures.add(
        Figure.formula(
            "Water hammer, low estimate",
            exact(result.surgeLowPsi()) + flow,
            "psi",
            "surge_low_psi"));
    figures.add(
        Figure.formula(
            "Water hammer, high estimate",
            exact(result.surgeHighPsi()) + flow,
            "psi",
            "surge_high_psi"));
    figures.add(
        Figure.fixed("Weight of all hose, empty", result.emptyWeightLb(), "lb", "empty_lb"));
    figures.add(
        Figure.fixed("Weight of all hose, full", result.chargedWeightLb(), "lb", "charged_lb"));
    figures.add(Figure.fixed("Water in one line", result.waterGal(), "gal", "water_gal"));
    plan.layout()
        .branchLeg()
        .ifPresent(
            attack ->
                figures.add(
                    Figure.fixed(
                        "Water in one attack line",
                        attack.water().waterGal(),
                        "gal",
                        "attack_water_gal")));
    result
        .reactionLbf()
        .ifPresent(lbf -> figures.add(Figure.fixed("Nozzle reaction", lbf, "lbf", "reaction_lbf")));
    rows.inPairs(figures);
    rows.note(
        "Water hammer is the rise on a sudden closure, by the velocity (Joukowsky): an upper bound,"
            + " so close slowly."
            + (plan.layout().branchLeg().isPresent()
                ? " The velocity is that in the hose where it is highest."
                : "")
            + (result.reactionLbf().isPresent()
                ? " The nozzle reaction holds at the planned flow and is more while it opens."
                : ""));
  }

  /** A figure as formulas write it. */
  static String exact(double value) {
    return new BigDecimal(String.valueOf(value)).toPlainString();
  }

  /** C as planned with; where another law decided, the one that gives its loss at this flow. */
  private static double coefficient(Leg leg) {
    double hundreds = leg.water().flowGpm() / 100;
    return leg.water()
        .friction()
        .coefficient()
        .orElseGet(
            () ->
                rounded(
                    leg.water().friction().lossPsi() / (hundreds * hundreds * laidFt(leg) / 100)));
  }

  /** Coupled lengths of one line of a leg, ft. */
  static double laidFt(Leg leg) {
    return leg.hose().map(Leg.Hose::laidFt).orElse(0.0);
  }

  static double riseFt(Hydraulics result) {
    List<Station> stations = result.profile();
    return stations.get(stations.size() - 1).elevationFt() - stations.get(0).elevationFt();
  }

  static double psiPerFt(Hydraulics result) {
    double riseFt = riseFt(result);
    return Math.abs(riseFt) < LEVEL_FT
        ? Physical.PSI_PER_FT
        : rounded(result.elevationLossPsi() / riseFt);
  }

  /** Ten significant digits: what a division adds behind them is noise. */
  private static double rounded(double value) {
    return new BigDecimal(value).round(new MathContext(10)).doubleValue();
  }
}
