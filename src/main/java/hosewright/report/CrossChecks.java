package hosewright.report;

import hosewright.line.LineHydraulicsResult;
import hosewright.line.LineHydraulicsResult.CrossCheck;

/** The other friction laws on the same hose, live, with the friction factor solved in sight. */
final class CrossChecks {
  /** Each step of the Colebrook equation gains at least one digit in turbulent flow. */
  static final int COLEBROOK_STEPS = 8;

  private final Page page;
  private final LineHydraulicsResult result;

  CrossChecks(Page page, LineHydraulicsResult result) {
    this.page = page;
    this.result = result;
  }

  void write() {
    if (result.crossCheck().isEmpty()) {
      return;
    }
    page.gap(8);
    page.next();
    page.span(0, page.lastColumn(), "The other friction laws on the same hose", Look.SECTION);
    for (CrossCheck check : result.crossCheck()) {
      check.c().ifPresent(c -> hazenWilliams(check, c));
      check.roughnessIn().ifPresent(roughness -> darcyWeisbach(check, roughness));
    }
  }

  private void hazenWilliams(CrossCheck check, double c) {
    input("Hazen-Williams C", c, "", "hw_c", "");
    input("Bore for Hazen-Williams", check.boreIn(), "in", "hw_bore_in", "");
    formula(
        "Friction loss by Hazen-Williams",
        "4.52*line_gpm^1.85/(hw_c^1.85*hw_bore_in^4.87)*laid_ft",
        "psi",
        "hw_friction_psi",
        "4.52 gpm^1.85 / (C^1.85 in^4.87) psi per foot, NFPA 13");
  }

  private void darcyWeisbach(CrossCheck check, double roughnessIn) {
    input("Roughness of the lining", roughnessIn, "in", "dw_roughness_in", "");
    input("Bore for Darcy-Weisbach", check.boreIn(), "in", "dw_bore_in", "");
    input(
        "Kinematic viscosity of water",
        1.217e-5,
        "ft\u00b2/s",
        "viscosity_ft2_per_s",
        "at 60 \u00b0F");
    formula(
        "Speed in this bore",
        "line_gpm*231/12/60/(PI()*dw_bore_in^2/4)",
        "ft/s",
        "dw_ft_per_s",
        "231 in\u00b3 per US gal over the bore's area");
    formula(
        "Reynolds number",
        "dw_ft_per_s*dw_bore_in/12/viscosity_ft2_per_s",
        "",
        "reynolds",
        "V D / \u03bd");
    formula(
        "Colebrook, start",
        "-2*LOG10(dw_roughness_in/dw_bore_in/3.7+5.74/reynolds^0.9)",
        "",
        "colebrook_0",
        "1/\u221af by Swamee and Jain");
    for (int step = 1; step <= COLEBROOK_STEPS; step++) {
      formula(
          "Colebrook, step " + step,
          "-2*LOG10(dw_roughness_in/dw_bore_in/3.7+2.51*colebrook_" + (step - 1) + "/reynolds)",
          "",
          "colebrook_" + step,
          step == 1 ? "1/\u221af = -2 log(\u03b5/D/3.7 + 2.51/(Re \u221af))" : "");
    }
    formula(
        "Friction factor f",
        "IF(reynolds<2040,64/reynolds,1/colebrook_" + COLEBROOK_STEPS + "^2)",
        "",
        "friction_factor",
        "64/Re when the flow is laminar");
    formula(
        "Friction loss by Darcy-Weisbach",
        "friction_factor*laid_ft/(dw_bore_in/12)*62.4/144*dw_ft_per_s^2/2/32.174",
        "psi",
        "dw_friction_psi",
        "f (L/D) \u03c1 V\u00b2/2");
  }

  private void input(String label, double value, String unit, String name, String words) {
    row(label, unit, words).number(1, value, Look.NUMBER_INPUT).named(1, name);
  }

  private void formula(String label, String formula, String unit, String name, String words) {
    row(label, unit, words).formula(1, formula, Look.SCIENTIFIC).named(1, name);
  }

  private Page row(String label, String unit, String words) {
    page.next();
    return page.text(0, label, Look.TEXT)
        .text(2, unit, Look.INDENTED)
        .span(3, page.lastColumn(), words, Look.TEXT);
  }
}
