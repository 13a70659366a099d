package hosewright.paper.quote;

import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.LinePlan;
import hosewright.line.model.WayThrough;
import hosewright.paper.drawing.PressureLimit;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Pressure along each way from the source to an appliance, as planned, with a chart below each: the
 * columns are those of {@link ProfileTable}, so that one chart serves both.
 */
final class WaysTable {
  private final Page page;
  private final LinePlan plan;

  WaysTable(Page page, LinePlan plan) {
    this.page = page;
    this.plan = plan;
  }

  void write() {
    List<WayThrough> ways =
        WayThrough.all(plan.layout()).stream().filter(way -> !way.profile().isEmpty()).toList();
    for (int i = 0; i < ways.size(); i++) {
      way(ways.get(i), ProfileChart.suffix(i + 1));
    }
  }

  private void way(WayThrough way, String suffix) {
    page.gap(8).newSheetOfPaper();
    page.next();
    page.span(0, page.lastColumn(), "Pressure along " + way.words(), Look.SECTION);
    OptionalDouble limit = PressureLimit.lowestPsi(plan);
    heading(limit.isPresent());
    List<Station> stations = way.profile();
    for (int i = 0; i < stations.size(); i++) {
      station(stations.get(i), plan.needPsi(way), limit);
      if (i == 0) {
        page.named(1, ProfileTable.FIRST_ROW + suffix);
      }
    }
    page.named(1, ProfileTable.LAST_ROW + suffix);
    page.gap(8);
    page.next();
    page.named(0, ProfileTable.CHART_ROW + suffix);
    for (int i = 0; i < ProfileChart.ROWS_HIGH; i++) {
      page.gap(14);
    }
  }

  private void heading(boolean limited) {
    page.next();
    page.text(0, "Station", Look.HEAD)
        .text(1, "Hose laid so far, ft", Look.HEAD_RIGHT)
        .text(2, "Height, ft", Look.HEAD_RIGHT)
        .text(3, "", Look.HEAD_RIGHT)
        .text(4, "Flowing, psi", Look.HEAD_RIGHT)
        .text(5, "Closed, psi", Look.HEAD_RIGHT)
        .text(6, "Needed at the end, psi", Look.HEAD_RIGHT);
    if (limited) {
      page.text(7, "Lowest working pressure, psi", Look.HEAD_RIGHT);
    }
  }

  private void station(Station station, double needPsi, OptionalDouble limit) {
    page.next();
    page.text(0, station.name(), Look.BODY)
        .number(1, station.distanceFt(), Look.BODY_NUMBER)
        .number(2, station.elevationFt(), Look.BODY_NUMBER)
        .text(3, "", Look.BODY)
        .number(4, station.flowingPsi(), Look.BODY_NUMBER)
        .number(5, station.closedPsi(), Look.BODY_NUMBER)
        .number(6, needPsi, Look.BODY_NUMBER);
    limit.ifPresent(psi -> page.number(7, psi, Look.BODY_NUMBER));
  }
}
