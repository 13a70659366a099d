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
    List<Station> stations = way.profile();
    if (stations.size() > ProfileTable.ROWS_BESIDE_A_CHART) {
      page.newSheetOfPaper();
      table(way, stations, suffix);
      page.together(() -> chart(suffix));
    } else {
      page.together(
          () -> {
            table(way, stations, suffix);
            chart(suffix);
          });
    }
  }

  private void table(WayThrough way, List<Station> stations, String suffix) {
    page.gap(6);
    page.next();
    page.span(0, page.lastColumn(), "Pressure along " + way.words(), Look.SECTION);
    OptionalDouble limit = PressureLimit.lowestPsi(plan);
    heading(limit.isPresent());
    for (int i = 0; i < stations.size(); i++) {
      station(stations, i, plan.needPsi(way), limit);
      if (i == 0) {
        page.named(1, ProfileTable.FIRST_ROW + suffix);
      }
    }
    page.named(1, ProfileTable.LAST_ROW + suffix);
  }

  private void chart(String suffix) {
    page.gap(4);
    page.next();
    page.named(0, ProfileTable.CHART_ROW + suffix);
    for (int i = 0; i < ProfileChart.ROWS_HIGH; i++) {
      page.gap(14);
    }
  }

  private void heading(boolean limited) {
    page.next();
    page.text(0, "Station", Look.HEAD)
        .text(1, "Hose laid, ft", Look.HEAD_RIGHT)
        .text(2, "Height, ft", Look.HEAD_RIGHT)
        .text(3, "Less than at the source, psi", Look.HEAD_RIGHT)
        .text(4, "Flowing, psi", Look.HEAD_RIGHT)
        .text(5, "Nozzle shut, psi", Look.HEAD_RIGHT)
        .text(6, "Needed at end, psi", Look.HEAD_RIGHT);
    if (limited) {
      page.text(7, "Lowest rating, psi", Look.HEAD_RIGHT);
    }
  }

  private void station(List<Station> stations, int at, double needPsi, OptionalDouble limit) {
    Station station = stations.get(at);
    page.next();
    page.text(0, StationNames.shown(stations, at), Look.BODY)
        .number(1, station.distanceFt(), Look.BODY_NUMBER)
        .number(2, station.elevationFt(), Look.BODY_NUMBER)
        .number(3, stations.get(0).flowingPsi() - station.flowingPsi(), Look.BODY_NUMBER)
        .number(4, station.flowingPsi(), Look.BODY_NUMBER)
        .number(5, station.closedPsi(), Look.BODY_NUMBER)
        .number(6, needPsi, Look.BODY_NUMBER);
    limit.ifPresent(psi -> page.number(7, psi, Look.BODY_NUMBER));
  }
}
