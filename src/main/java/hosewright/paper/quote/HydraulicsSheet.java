package hosewright.paper.quote;

import hosewright.hydraulics.law.Physical;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.FormulaRows;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/**
 * How pressure goes along the line, each formula live beside its inputs.
 *
 * <p>Every figure has a defined name and every formula is written with those names, so that an
 * engineer can read it, change the flow and see it move.
 */
final class HydraulicsSheet {
  static final int[] WIDTHS = {46, 13, 9, 14, 12, 12, 13, 15};

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
    planned();
    pressures();
    forces();
    new ProfileTable(page, plan).write();
    new CrossChecks(page, plan).write();
    page.finishedBelow(1);
  }

  private void inputs() {
    rows.section("Inputs");
    Leg supply = plan.layout().firstHoseLeg().orElseThrow();
    rows.input("Flow in all", plan.flowGpm(), "gpm", "flow_gpm", "");
    rows.input(
        "Parallel lines", supply.lines(), "", "parallel_lines", "Each carries an equal share.");
    rows.input("Hose laid in one line", laidFt(supply), "ft", "laid_ft", "");
    plan.layout().branchLeg().ifPresent(this::attackInputs);
    rows.input(
        "Friction coefficient C",
        coefficient(supply),
        "",
        "friction_c",
        "psi per 100 ft at 100 gpm: " + result.frictionBasis());
    rows.input("Rise, source to appliance", riseFt(result), "ft", "rise_ft", "Negative downhill.");
    rows.input("Pressure per foot of rise", psiPerFt(result), "psi/ft", "psi_per_ft", "");
    rows.input("Pressure needed at the appliance", plan.needPsi(), "psi", "need_psi", "");
    sourcePressure();
    rows.input(
        "Loss in appliances in the line",
        result.applianceLossPsi(),
        "psi",
        "appliance_psi",
        "As stated by their makers or taught; it does not follow the flow by itself.");
    rows.input(
        "Closed: pressure at the source",
        result.profile().get(0).closedPsi(),
        "psi",
        "closed_source_psi",
        "With no water flowing.");
  }

  private void attackInputs(Leg attack) {
    rows.input(
        "Attack lines behind the wye",
        attack.lines(),
        "",
        "attack_lines",
        "Each carries an equal share to an appliance of its own.");
    rows.input("Hose laid in one attack line", laidFt(attack), "ft", "attack_ft", "");
    rows.input(
        "Friction coefficient C of the attack lines",
        coefficient(attack),
        "",
        "attack_c",
        "psi per 100 ft at 100 gpm: " + attack.water().friction().basis());
  }

  private void sourcePressure() {
    String label = "Pressure at the source";
    String words = "At the flow above, which it does not follow. Empty: what the line requires.";
    result
        .sourcePsi()
        .ifPresentOrElse(
            psi -> rows.input(label, psi, "psi", "source_psi", words),
            () -> rows.emptyInput(label, "psi", "source_psi", words));
  }

  private void planned() {
    rows.section("As planned, for scaling");
    rows.fixed("Flow", plan.flowGpm(), "gpm", "planned_gpm", "");
    rows.fixed("Loss in fittings", result.adapterLossPsi(), "psi", "planned_adapter_psi", "");
    rows.fixed("Loss in appliances", result.applianceLossPsi(), "psi", "planned_appliance_psi", "");
    rows.fixed("Speed of the water", result.velocityFtPerS(), "ft/s", "planned_ft_per_s", "");
    rows.fixed("Time to fill", result.fillMinutes(), "min", "planned_fill_min", "");
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
        "Loss in fittings",
        "planned_adapter_psi*(flow_gpm/planned_gpm)^2",
        "psi",
        "adapter_psi",
        "by the square of the flow");
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
        "Arrives at the appliance",
        "start_psi-friction_psi" + attack("-") + "-elevation_psi-adapter_psi-appliance_psi",
        "psi",
        "delivered_psi",
        "source less every loss");
    rows.formula(
        "To spare",
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
    rows.section("Speed, force and weight");
    rows.formula(
        "Speed of the water",
        "planned_ft_per_s*flow_gpm/planned_gpm",
        "ft/s",
        "speed_ft_per_s",
        plan.layout().branchLeg().isPresent() ? "in the hose where it is fastest" : "in the hose");
    surge("Rise on sudden closure, low estimate", result.surgeLowPsi(), "surge_low_psi");
    surge("Rise on sudden closure, high estimate", result.surgeHighPsi(), "surge_high_psi");
    result
        .reactionLbf()
        .ifPresent(
            lbf ->
                rows.fixed(
                    "Nozzle reaction at the planned flow",
                    lbf,
                    "lbf",
                    "reaction_lbf",
                    "More while it opens: open and close slowly."));
    rows.fixed("Water in one line", result.waterGal(), "gal", "water_gal", "");
    plan.layout()
        .branchLeg()
        .ifPresent(
            attack ->
                rows.fixed(
                    "Water in one attack line",
                    attack.water().waterGal(),
                    "gal",
                    "attack_water_gal",
                    ""));
    rows.fixed("Weight of all hose, empty", result.emptyWeightLb(), "lb", "empty_lb", "");
    rows.fixed("Weight of all hose, full", result.chargedWeightLb(), "lb", "charged_lb", "");
    rows.formula("Time to fill", "planned_fill_min*planned_gpm/flow_gpm", "min", "fill_min", "");
  }

  private void surge(String label, double psi, String name) {
    rows.formula(
        label,
        psi + "*flow_gpm/planned_gpm",
        "psi",
        name,
        "by the speed (Joukowsky); an upper bound, so close slowly");
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
