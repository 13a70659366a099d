package hosewright.paper.quote;

import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.LinePlan;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Set;
import org.apache.commons.lang3.StringUtils;

/** Each check with its value, its limit and where that comes from. */
final class ChecksSheet {
  static final int[] WIDTHS = {23, 10, 10, 10, 9, 58, 40};

  private static final Set<String> COUNTED = Set.of("joints", "adapters");

  private final Page page;
  private boolean branched;

  ChecksSheet(Page page) {
    this.page = page;
  }

  void write(Quote quote, Group group) {
    LinePlan plan = group.plan();
    branched = plan.layout().branched();
    page.next();
    page.span(0, page.lastColumn(), "Checks" + GroupWords.behind(quote, group), Look.TITLE);
    page.next();
    page.span(0, page.lastColumn(), verdict(plan), Look.STRONG);
    int heading =
        page.heading(
            List.of("Check", "Outcome", "Value", "Limit", "Unit", "Meaning", "Source"),
            Set.of(2, 3));
    plan.checks().forEach(this::check);
    page.finished(heading);
  }

  private static String verdict(LinePlan plan) {
    long fails = plan.checks().stream().filter(c -> c.outcome() == Outcome.FAIL).count();
    String counted =
        fails == 0 ? "No check fails." : fails == 1 ? "One check fails." : fails + " checks fail.";
    return plan.limitedBy()
        .map(limit -> counted + " This line falls short: " + limit)
        .orElse(counted);
  }

  private void check(Check check) {
    page.next();
    String leg = check.leg().filter(any -> branched).map(name -> "\n" + name).orElse("");
    page.text(0, StringUtils.capitalize(check.name()) + leg, Look.BODY)
        .text(
            1,
            check.outcome().name(),
            check.outcome() == Outcome.FAIL ? Look.BODY_ALARM : Look.BODY_STRONG)
        .text(4, check.unit(), Look.BODY)
        .text(5, StringUtils.capitalize(check.note()), Look.BODY)
        .text(6, check.source(), Look.BODY);
    figure(2, check.value(), check);
    figure(3, check.limit(), check);
  }

  private void figure(int column, double value, Check check) {
    if (check.isYesOrNo()) {
      page.text(column, "", Look.BODY);
    } else {
      page.number(
          column, value, COUNTED.contains(check.unit()) ? Look.BODY_COUNT : Look.BODY_NUMBER);
    }
  }
}
