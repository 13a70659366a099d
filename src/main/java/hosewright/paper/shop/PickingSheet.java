package hosewright.paper.shop;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.paper.drawing.JointWords;
import hosewright.paper.drawing.LaidLine;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Departures;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.thread.End;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** For the person in the store room: what to take off the shelf, and how it goes together. */
final class PickingSheet {
  static final int[] WIDTHS = {8, 7, 22, 50, 10, 8, 12, 22};

  private final Page page;

  PickingSheet(Page page) {
    this.page = page;
  }

  void write(Quote quote) {
    page.next();
    page.span(0, page.lastColumn(), "To pick", Look.TITLE);
    int heading =
        page.heading(
            List.of(
                "Picked", "Line", "Item", "Description", "Quantity", "Unit", "Weight lb", "Remark"),
            Set.of(4, 6));
    List<Group> groups = quote.groups().stream().filter(group -> !group.optional()).toList();
    for (Group group : groups) {
      if (quote.groups().size() > 1) {
        page.next();
        page.span(0, page.lastColumn(), group.heading().words(), Look.STRONG);
      }
      quote.lines(group).forEach(this::pick);
    }
    int last = page.rowNumber();
    page.next();
    page.span(3, 5, "Weight of all", Look.TOTAL_LABEL)
        .formula(
            6,
            last > heading ? "SUM(G" + (heading + 1) + ":G" + last + ")" : "0",
            Look.NUMBER_STRONG)
        .named(6, "picked_weight_lb");
    for (Group group : groups) {
      if (group.laid() || quote.groups().size() == 1) {
        assembly(quote, group);
      }
    }
    // Two tables: on a further page the heading of the first would stand over the second.
    page.finishedBelow(heading);
  }

  private void pick(QuoteLine line) {
    int row = page.next();
    double eachLb = line.quantity() == 0 ? 0 : line.goods().weightLb() / line.quantity();
    page.text(0, "", Look.BOX)
        .number(1, line.position(), Look.BODY_ORDER)
        .text(2, line.goods().item(), Look.BODY)
        .text(3, line.goods().description(), Look.BODY)
        .number(4, line.quantity(), Look.BODY_INPUT)
        .text(5, line.goods().unit(), Look.BODY)
        .formula(6, "E" + row + "*" + eachLb, Look.BODY_NUMBER)
        .text(7, line.note().orElse(""), Look.BODY);
  }

  private void assembly(Quote quote, Group group) {
    LinePlan plan = group.plan();
    String which = quote.groups().size() == 1 ? "" : ": " + group.heading().words();
    page.gap(10);
    page.next();
    page.span(0, page.lastColumn(), "To assemble, from source to appliance" + which, Look.TITLE);
    page.next();
    page.text(0, "Done", Look.HEAD)
        .text(1, "Step", Look.HEAD)
        .text(2, "Item", Look.HEAD)
        .text(3, "Part", Look.HEAD)
        .text(4, "Count", Look.HEAD_RIGHT)
        .span(5, 6, "Faces the source", Look.HEAD)
        .text(7, "Faces the appliance", Look.HEAD);
    int step = 1;
    for (Step laid : LaidLine.of(plan)) {
      Part part = laid.part();
      if (laid.leg().isPresent()) {
        page.next();
        page.span(
            0,
            page.lastColumn(),
            "Leg " + laid.leg().get().name() + such(laid.leg().get()),
            Look.STRONG);
      }
      page.next();
      page.text(0, "", Look.BOX)
          .number(1, step++, Look.BODY_ORDER)
          .text(2, LaidLine.origin(laid), Look.BODY)
          .text(3, part.description(), Look.BODY)
          .number(4, part.count(), Look.BODY_COUNT)
          .span(5, 6, end(laid.upstream()), Look.BODY)
          .text(7, end(laid.downstream()), Look.BODY);
    }
    page.next();
    page.span(0, page.lastColumn(), JointWords.gaskets(plan.bill().gaskets()), Look.TEXT);
    Stream.concat(plan.layout().remarks().stream(), Departures.of(quote, group).stream())
        .forEach(
            remark -> {
              page.next();
              page.span(0, page.lastColumn(), remark, Look.STRONG);
            });
  }

  private static String such(Leg leg) {
    return leg.lines() > 1 ? ", " + leg.lines() + " such lines" : "";
  }

  private static String end(Optional<End> end) {
    return end.map(End::toString).orElse("");
  }
}
