package hosewright.report;

import hosewright.line.LineHydraulicsResult;
import hosewright.line.LinePlan;

/**
 * How pressure goes along the line, each formula live beside its inputs.
 *
 * <p>Every input has a defined name and every formula is written with those names, so that an
 * engineer can read it, change the flow and see it move.
 */
final class HydraulicsSheet {
  static final int[] WIDTHS = {34, 12, 9, 13, 11, 11, 12, 13};

  private static final int LABEL = 0;
  private static final int VALUE = 1;
  private static final int UNIT = 2;
  private static final int WORDS = 3;

  private final Page page;
  private final LinePlan plan;
  private final LineHydraulicsResult result;

  HydraulicsSheet(Page page, LinePlan plan) {
    this.page = page;
    this.plan = plan;
    this.result = plan.hydraulics();
  }

  void write() {
    page.next();
    page.span(0, page.lastColumn(), "Hydraulics", Look.TITLE);
    if (!(plan.flowGpm() > 0) || result.profile().isEmpty()) {
      page.next();
      page.span(0, page.lastColumn(), "No hydraulics were computed for this job.", Look.TEXT);
      page.locked();
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
    losses();
    cautions();
    new CrossChecks(page, result).write();
    new ProfileTable(page, plan).write();
    page.frozenBelow(1).locked();
  }

  private void inputs() {
    section("Inputs");
    double linesCount = plan.lines();
    double perLineGpm = plan.flowGpm() / linesCount;
    double hundreds = perLineGpm / 100;
    double coefficient = result.frictionLossPsi() / (hundreds * hundreds * plan.laidFt() / 100);
    double riseFt = riseFt();
    input("Flow in all", plan.flowGpm(), "gpm", "flow_gpm", "");
    input("Parallel lines", linesCount, "", "parallel_lines", "Each carries an equal share.");
    input("Hose laid in one line", plan.laidFt(), "ft", "laid_ft", "");
    input(
        "Friction coefficient C",
        rounded(coefficient),
        "",
        "friction_c",
        "psi per 100 ft at 100 gpm: " + result.frictionBasis());
    input("Rise, source to appliance", riseFt, "ft", "rise_ft", "Negative downhill.");
    input(
        "Pressure per foot of rise",
        riseFt == 0 ? 0.434 : rounded(result.elevationLossPsi() / riseFt),
        "psi/ft",
        "psi_per_ft",
        "Weight of water, 62.4 lb/ft\u00b3 over 144 in\u00b2/ft\u00b2.");
    input("Pressure needed at the appliance", plan.needPsi(), "psi", "need_psi", "");
    sourcePressure();
    input(
        "Closed: pressure at the source",
        result.profile().get(0).closedPsi(),
        "psi",
        "closed_source_psi",
        "With no water flowing.");
    fixed(
        "Flow of the plan",
        plan.flowGpm(),
        "gpm",
        "planned_gpm",
        "As planned; fitting losses are scaled from it.");
    fixed(
        "Loss in adapters at that flow", result.adapterLossPsi(), "psi", "planned_adapter_psi", "");
    fixed(
        "Loss in appliances in the line",
        result.applianceLossPsi(),
        "psi",
        "planned_appliance_psi",
        "");
  }

  private void sourcePressure() {
    page.next();
    page.text(LABEL, "Pressure at the source", Look.TEXT);
    result
        .sourcePsi()
        .ifPresentOrElse(
            psi -> page.number(VALUE, psi, Look.NUMBER_INPUT),
            () -> page.text(VALUE, "", Look.NUMBER_INPUT));
    page.named(VALUE, "source_psi")
        .text(UNIT, "psi", Look.INDENTED)
        .span(
            WORDS,
            page.lastColumn(),
            "At the flow above; it does not follow the flow by itself. Empty: whatever the line requires.",
            Look.TEXT);
  }

  private void losses() {
    section("Pressures");
    formula("Flow in one line", "flow_gpm/parallel_lines", "gpm", "line_gpm", "");
    formula(
        "Friction loss in the hose",
        "friction_c*(line_gpm/100)^2*laid_ft/100",
        "psi",
        "friction_psi",
        "C \u00d7 (gpm/100)\u00b2 \u00d7 (ft/100)");
    formula(
        "Elevation loss", "rise_ft*psi_per_ft", "psi", "elevation_psi", "rise \u00d7 psi per foot");
    formula(
        "Loss in adapters",
        "planned_adapter_psi*(flow_gpm/planned_gpm)^2",
        "psi",
        "adapter_psi",
        "by the square of the flow");
    formula(
        "Loss in appliances in the line",
        "planned_appliance_psi*(flow_gpm/planned_gpm)^2",
        "psi",
        "appliance_psi",
        "by the square of the flow");
    formula(
        "Required at the source",
        "need_psi+friction_psi+elevation_psi+adapter_psi+appliance_psi",
        "psi",
        "required_psi",
        "need plus every loss");
    formula(
        "Arrives at the appliance",
        "IF(ISNUMBER(source_psi),source_psi,required_psi)"
            + "-friction_psi-elevation_psi-adapter_psi-appliance_psi",
        "psi",
        "delivered_psi",
        "source less every loss");
    formula(
        "To spare",
        "delivered_psi-need_psi",
        "psi",
        "spare_psi",
        "below zero: the line falls short");
  }

  private void cautions() {
    section("Speed, weight and force");
    formula(
        "Speed of the water",
        "planned_ft_per_s*flow_gpm/planned_gpm",
        "ft/s",
        "speed_ft_per_s",
        "in the hose");
    fixed(
        "Speed at the planned flow",
        result.velocityFtPerS(),
        "ft/s",
        "planned_ft_per_s",
        "As planned.");
    surge("Rise on sudden closure, slow wave", result.surgeLowPsi(), "surge_low_psi");
    surge("Rise on sudden closure, fast wave", result.surgeHighPsi(), "surge_high_psi");
    result
        .reactionLbf()
        .ifPresent(
            lbf ->
                fixed(
                    "Nozzle reaction at the planned flow",
                    lbf,
                    "lbf",
                    "reaction_lbf",
                    "Mind your footing; open and close slowly."));
    fixed("Water in one line", result.waterGal(), "gal", "water_gal", "");
    fixed("Weight of all hose, empty", result.emptyWeightLb(), "lb", "empty_lb", "");
    fixed("Weight of all hose, full", result.chargedWeightLb(), "lb", "charged_lb", "");
    formula(
        "Time to fill",
        "planned_fill_min*planned_gpm/flow_gpm",
        "min",
        "fill_min",
        "at the flow above");
    fixed(
        "Time to fill at the planned flow",
        result.fillMinutes(),
        "min",
        "planned_fill_min",
        "As planned.");
  }

  private void surge(String label, double psi, String name) {
    formula(
        label,
        psi + "*flow_gpm/planned_gpm",
        "psi",
        name,
        "by the speed of the water (Joukowsky); an upper bound, so close slowly");
  }

  private double riseFt() {
    var stations = result.profile();
    return stations.get(stations.size() - 1).elevationFt() - stations.get(0).elevationFt();
  }

  private void section(String heading) {
    page.gap(8);
    page.next();
    page.span(0, page.lastColumn(), heading, Look.SECTION);
  }

  private void input(String label, double value, String unit, String name, String words) {
    row(label, unit, words).number(VALUE, value, Look.NUMBER_INPUT).named(VALUE, name);
  }

  private void fixed(String label, double value, String unit, String name, String words) {
    row(label, unit, words).number(VALUE, value, Look.NUMBER).named(VALUE, name);
  }

  private void formula(String label, String formula, String unit, String name, String words) {
    row(label, unit, words).formula(VALUE, formula, Look.NUMBER).named(VALUE, name);
  }

  private Page row(String label, String unit, String words) {
    page.next();
    return page.text(LABEL, label, Look.TEXT)
        .text(UNIT, unit, Look.INDENTED)
        .span(WORDS, page.lastColumn(), words, Look.TEXT);
  }

  /** Ten significant digits: what division by the flow adds behind them is noise. */
  private static double rounded(double value) {
    return new java.math.BigDecimal(value).round(new java.math.MathContext(10)).doubleValue();
  }
}
