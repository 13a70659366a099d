package hosewright.paper.quote;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The water in each leg of a layout, as planned. One line's formulas do not hold for lines that
 * part, so nothing here moves when a figure is changed.
 */
final class LegsTable {
  private static final List<String> COLUMNS =
      List.of(
          "Leg",
          "Lines",
          "Hose, in",
          "Laid in one, ft",
          "Flow in one, gpm",
          "Friction loss, psi",
          "Where it begins, psi",
          "Where it ends, psi");
  private static final Set<Integer> FIGURES = Set.of(1, 2, 3, 4, 5, 6, 7);

  private final Page page;
  private final LinePlan plan;

  LegsTable(Page page, LinePlan plan) {
    this.page = page;
    this.plan = plan;
  }

  void write() {
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "As planned, with every appliance open. What divides the water takes its loss between the"
            + " end of one leg and the beginning of the next.",
        Look.TEXT);
    page.next();
    page.heading(COLUMNS, FIGURES);
    plan.layout().legs().forEach(this::row);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        String.format(
            Locale.ROOT,
            plan.layout().draws()
                ? "Behind the strainer at least %.1f psi must stand; %.1f psi arrive at the"
                    + " appliance with least to spare."
                : "The source must hold %.1f psi for the appliance that needs most of it; %.1f psi"
                    + " arrive at the one with least to spare.",
            plan.hydraulics().requiredSourcePsi(),
            plan.hydraulics().deliveredPsi()),
        Look.TEXT);
  }

  private void row(Leg leg) {
    page.next();
    page.text(0, leg.name() + ", from " + leg.begins(), Look.BODY)
        .number(1, leg.lines(), Look.BODY_COUNT)
        .number(2, leg.hose().map(Leg.Hose::sizeIn).orElse(0.0), Look.BODY_LOOSE)
        .number(3, leg.hose().map(Leg.Hose::laidFt).orElse(0.0), Look.BODY_NUMBER)
        .number(4, leg.water().flowGpm(), Look.BODY_NUMBER)
        .number(5, leg.water().friction().lossPsi(), Look.BODY_NUMBER)
        .number(6, leg.water().inletPsi(), Look.BODY_NUMBER)
        .number(7, leg.water().outletPsi(), Look.BODY_NUMBER);
  }
}
