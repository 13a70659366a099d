package hosewright.paper.shop;

import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.Alternative;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Set;

/** The best plan of every other hose size and why it lost, and what would do where none does. */
final class AlternativesSheet {
  static final int[] WIDTHS = {10, 14, 26, 8, 11, 13, 13, 48};

  private final Page page;

  AlternativesSheet(Page page) {
    this.page = page;
  }

  /** Whether there is anything to say of other ways. */
  static boolean hasAny(LinePlan plan) {
    return !plan.alternatives().isEmpty() || !plan.instead().isEmpty();
  }

  void write(Quote quote, Group group) {
    LinePlan plan = group.plan();
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Other ways to do the job" + ShopWorkbook.behind(quote, group),
        Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        plan.alternatives().isEmpty()
            ? "No other hose size was compared."
            : "Goods only, in "
                + quote.total().getCurrencyUnit().getCode()
                + ", without freight and tax; the plan quoted stands first.",
        Look.TEXT);
    int heading =
        page.heading(
            List.of(
                "Hose, in",
                "Couplings, in",
                "Make",
                "Lines",
                "Passes checks",
                "Goods",
                "Source needs, psi",
                "Why not"),
            Set.of(0, 1, 3, 5, 6));
    plan.hose()
        .ifPresent(
            hose ->
                row(
                    new Alternative(
                        hose,
                        plan.feasible(),
                        plan.total(),
                        plan.hydraulics().requiredSourcePsi(),
                        "quoted"),
                    plan));
    plan.alternatives().forEach(other -> row(other, plan));
    instead(plan.instead());
    page.finished(heading);
  }

  private void row(Alternative other, LinePlan plan) {
    page.next();
    page.number(0, other.hose().sizeIn(), Look.BODY_LOOSE)
        .number(1, other.hose().couplingSizeIn(), Look.BODY_LOOSE)
        .text(2, other.hose().series(), Look.BODY)
        .number(3, other.hose().lines(), Look.BODY_COUNT)
        .text(4, other.feasible() ? "yes" : "NO", Look.BODY_STRONG)
        .money(5, other.total(), Look.BODY_MONEY)
        .text(7, other.why(), Look.BODY);
    if (plan.hydraulics().calculated()) {
      page.number(6, other.requiredSourcePsi(), Look.BODY_NUMBER);
    } else {
      page.text(6, "", Look.BODY);
    }
  }

  private void instead(List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    page.gap(8);
    page.next();
    page.span(0, page.lastColumn(), "What would do instead", Look.SECTION);
    for (String sentence : sentences) {
      page.next();
      page.span(0, page.lastColumn(), "\u2022 " + sentence, Look.TEXT);
    }
  }
}
