package hosewright.paper.quote;

import hosewright.line.model.Joint;
import hosewright.line.model.LinePlan;
import hosewright.paper.drawing.JointWords;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.thread.Verdict.Outcome;
import java.util.List;
import java.util.Set;

/** Every joint from source to appliance: what meets, whether it mates, and what keeps it tight. */
final class JointsSheet {
  static final int[] WIDTHS = {5, 22, 16, 20, 22, 8, 10, 9, 12, 36};

  private final Page page;
  private final PartNames names = new PartNames();

  JointsSheet(Page page) {
    this.page = page;
  }

  void write(Quote quote, Group group) {
    LinePlan plan = group.plan();
    page.next();
    page.span(
        0,
        page.lastColumn(),
        "Joints from source to appliance" + GroupWords.behind(quote, group),
        Look.TITLE);
    int heading =
        page.heading(
            List.of(
                "No.",
                "Upstream part",
                "Upstream end",
                "Downstream end",
                "Downstream part",
                "Count",
                "Verdict",
                "Seal",
                "Removable",
                "Why"),
            Set.of(5));
    int last = plan.joints().size() - 1;
    for (int i = 0; i < last; i++) {
      joint(plan, i);
    }
    // Sentences alone under a repeated heading would look like an empty table.
    page.together(
        () -> {
          if (last >= 0) {
            joint(plan, last);
          }
          gaskets(plan);
        });
    page.finished(heading);
  }

  private void joint(LinePlan plan, int at) {
    Joint joint = plan.joints().get(at);
    boolean newLeg = at == 0 || !plan.joints().get(at - 1).leg().equals(joint.leg());
    if (plan.layout().branched() && newLeg) {
      page.next();
      page.span(0, page.lastColumn(), "Leg " + joint.leg(), Look.STRONG);
    }
    row(at + 1, joint);
  }

  private void row(int number, Joint joint) {
    page.next();
    page.number(0, number, Look.BODY_ORDER)
        .text(1, names.of(joint.upstream()), Look.BODY)
        .text(2, joint.upstream().end().toString(), Look.BODY)
        .text(3, joint.downstream().end().toString(), Look.BODY)
        .text(4, names.of(joint.downstream()), Look.BODY)
        .number(5, joint.count(), Look.BODY_COUNT)
        .text(
            6,
            JointWords.verdict(joint.fit().verdict()),
            joint.fit().verdict() == Outcome.MATES ? Look.BODY_STRONG : Look.BODY_ALARM)
        .text(7, JointWords.seal(joint.fit().seal()), Look.BODY_CENTRE)
        .text(8, joint.fit().removable() ? "yes" : "no", Look.BODY_CENTRE)
        .text(9, joint.fit().reason(), Look.BODY);
  }

  private void gaskets(LinePlan plan) {
    page.gap(8);
    page.next();
    page.span(0, page.lastColumn(), JointWords.gaskets(plan.bill().gaskets()), Look.TEXT);
    for (String remark : plan.layout().remarks()) {
      page.next();
      page.span(0, page.lastColumn(), remark, Look.TEXT);
    }
  }
}
