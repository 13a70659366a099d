package hosewright.paper.shop;

import hosewright.line.model.Hydraulics.CrossCheck;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.FormulaRows;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.Optional;

/** The friction formulas on the same hose, live, with the friction factor solved in sight. */
final class FrictionSheet {
  static final int[] WIDTHS = {46, 13, 9, 56};

  /** Enough that a further step changes no digit shown, at any Reynolds number of a hose. */
  static final int COLEBROOK_STEPS = 8;

  /** What a quote frozen before it said its water's temperature was calculated at, as a rule. */
  private static final double USUAL_F = 60;

  private final Page page;
  private final FormulaRows rows;
  private final LinePlan plan;

  FrictionSheet(Page page, LinePlan plan) {
    this.page = page;
    this.rows = new FormulaRows(page);
    this.plan = plan;
  }

  /** Whether another formula was tried on the line. */
  static boolean hasAny(LinePlan plan) {
    return !plan.layout().branched() && !plan.hydraulics().crossCheck().isEmpty();
  }

  void write(String behind) {
    page.next();
    page.span(0, page.lastColumn(), "Cross-check of friction formulas" + behind, Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "The other formulas on the same hose. Boxed cells may be changed; the rest follows.",
        Look.TEXT);
    water();
    for (CrossCheck check : plan.hydraulics().crossCheck()) {
      check.c().ifPresent(c -> hazenWilliams(check, c));
      check
          .roughnessIn()
          .ifPresent(
              roughness ->
                  darcyWeisbach(check, roughness, check.waterTemperatureF().orElse(USUAL_F)));
    }
    page.finishedBelow(1);
  }

  /** The flow in one line, and what was planned with. */
  private void water() {
    rows.section("As planned");
    Leg supply = plan.layout().firstHoseLeg().orElseThrow();
    rows.input("Flow in all", plan.flowGpm(), "gpm", "flow_gpm", "");
    rows.input("Parallel lines", supply.lines(), "", "parallel_lines", "");
    rows.input("Hose laid in one line", laidFt(supply), "ft", "laid_ft", "");
    rows.formula("Flow in one line", "flow_gpm/parallel_lines", "gpm", "line_gpm", "");
    plan.layout()
        .branchLeg()
        .ifPresent(
            attack -> {
              rows.input("Attack lines behind the wye", attack.lines(), "", "attack_lines", "");
              rows.input("Hose laid in one attack line", laidFt(attack), "ft", "attack_ft", "");
              rows.formula(
                  "Flow in one attack line", "flow_gpm/attack_lines", "gpm", "attack_gpm", "");
            });
    rows.fixed(
        "Friction loss as planned",
        plan.hydraulics().frictionLossPsi(),
        "psi",
        "planned_friction_psi",
        plan.hydraulics().frictionBasis());
  }

  private static double laidFt(Leg leg) {
    return leg.hose().map(Leg.Hose::laidFt).orElse(0.0);
  }

  private void hazenWilliams(CrossCheck check, double c) {
    rows.section("Hazen-Williams");
    rows.input("Hazen-Williams C", c, "", "hw_c", "");
    rows.input("Inside diameter for Hazen-Williams", check.boreIn(), "in", "hw_bore_in", "");
    attackBoreIn()
        .ifPresent(
            bore ->
                rows.input(
                    "Inside diameter of the attack lines", bore, "in", "hw_attack_bore_in", ""));
    rows.formula(
        "Friction loss by Hazen-Williams",
        "4.52*(line_gpm/hw_c)^1.85/hw_bore_in^4.87*laid_ft"
            + (attackBoreIn().isPresent()
                ? "+4.52*(attack_gpm/hw_c)^1.85/hw_attack_bore_in^4.87*attack_ft"
                : ""),
        "psi",
        "hw_friction_psi",
        "4.52 gpm^1.85 / (C^1.85 in^4.87) psi per foot, NFPA 13");
  }

  private void darcyWeisbach(CrossCheck check, double roughnessIn, double waterF) {
    rows.section("Darcy-Weisbach");
    rows.input("Roughness of the lining", roughnessIn, "in", "dw_roughness_in", "");
    rows.input("Inside diameter for Darcy-Weisbach", check.boreIn(), "in", "dw_bore_in", "");
    temperature(waterF);
    friction("", "", "line_gpm");
    attackBoreIn()
        .ifPresent(
            bore -> {
              rows.input(
                  "Inside diameter of the attack lines", bore, "in", "attack_dw_bore_in", "");
              friction("attack_", ", attack line", "attack_gpm");
            });
    rows.formula(
        "Friction loss by Darcy-Weisbach",
        loss("", "laid_ft")
            + (attackBoreIn().isPresent() ? "+" + loss("attack_", "attack_ft") : ""),
        "psi",
        "dw_friction_psi",
        "f (L/D) V\u00b2/2g \u00d7 density");
  }

  private Optional<Double> attackBoreIn() {
    return plan.layout().branchLeg().flatMap(Leg::hose).map(Leg.Hose::boreIn);
  }

  private static String loss(String of, String lengthFt) {
    return of
        + "friction_factor*"
        + lengthFt
        + "/("
        + of
        + "dw_bore_in/12)*"
        + of
        + "dw_ft_per_s^2/2/32.17405*density_lb_per_ft3/144";
  }

  /**
   * The friction factor in one hose.
   *
   * @param of before the names of its cells
   * @param where behind its labels
   */
  private void friction(String of, String where, String flowGpm) {
    rows.formula(
        "Speed at this diameter" + where,
        flowGpm + "*231/12/60/(PI()*" + of + "dw_bore_in^2/4)",
        "ft/s",
        of + "dw_ft_per_s",
        "231 in\u00b3 per US gal over the area");
    rows.formula(
        "Reynolds number" + where,
        of + "dw_ft_per_s*" + of + "dw_bore_in/12/viscosity_ft2_per_s",
        "",
        of + "reynolds",
        "V D / \u03bd",
        Look.COUNT);
    colebrook(of, where);
  }

  private void temperature(double waterF) {
    rows.input("Water temperature", waterF, "\u00b0F", "water_f", "32 to 212");
    rows.formula("The same in Celsius", "(water_f-32)/1.8", "\u00b0C", "water_c", "");
    rows.formula(
        "Density of water",
        "(999.83952+16.945176*water_c-7.9870401E-3*water_c^2-46.170461E-6*water_c^3"
            + "+105.56302E-9*water_c^4-280.54253E-12*water_c^5)/(1+16.87985E-3*water_c)"
            + "*0.3048^3/0.45359237",
        "lb/ft\u00b3",
        "density_lb_per_ft3",
        "Kell, J. Chem. Eng. Data 20 (1975) 97, eq. 16",
        Look.FINE);
    rows.formula(
        "Kinematic viscosity of water",
        "(water_c+246)/((0.05594*water_c+5.2842)*water_c+137.37)/1000"
            + "/(density_lb_per_ft3*0.45359237/0.3048^3)/0.3048^2",
        "ft\u00b2/s",
        "viscosity_ft2_per_s",
        "Lalibert\u00e9, J. Chem. Eng. Data 52 (2007) 321, eq. 11",
        Look.SCIENTIFIC);
  }

  private void colebrook(String of, String where) {
    String relative = "dw_roughness_in/" + of + "dw_bore_in/3.7";
    rows.formula(
        "Colebrook, start" + where,
        "-2*LOG10(" + relative + "+5.74/" + of + "reynolds^0.9)",
        "",
        of + "colebrook_0",
        "1/\u221af by Swamee and Jain",
        Look.FINE);
    for (int step = 1; step <= COLEBROOK_STEPS; step++) {
      rows.formula(
          "Colebrook, step " + step + where,
          "-2*LOG10("
              + relative
              + "+2.51*"
              + of
              + "colebrook_"
              + (step - 1)
              + "/"
              + of
              + "reynolds)",
          "",
          of + "colebrook_" + step,
          step == 1 ? "1/\u221af = -2 log(\u03b5/D/3.7 + 2.51/(Re \u221af)), again and again" : "",
          Look.FINE);
    }
    rows.formula(
        "Friction factor f" + where,
        "IF("
            + of
            + "reynolds<2040,64/"
            + of
            + "reynolds,1/"
            + of
            + "colebrook_"
            + COLEBROOK_STEPS
            + "^2)",
        "",
        of + "friction_factor",
        "64/Re below Re 2040, where flow is laminar",
        Look.FINE);
  }
}
