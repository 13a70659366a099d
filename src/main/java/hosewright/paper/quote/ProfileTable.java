package hosewright.paper.quote;

import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.drawing.PressureLimit;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/** Pressure at every station, flowing and closed, live; the chart below it draws this table. */
final class ProfileTable {
  static final String FIRST_ROW = "profile_first";
  static final String LAST_ROW = "profile_last";
  static final String CHART_ROW = "profile_chart";
  static final String HEIGHT_CHART_ROW = "height_chart";

  static final int ROWS_BESIDE_A_CHART = 24;

  /** Heights that differ by less look alike on paper. */
  private static final double UNEVEN_FT = 1;

  private final Page page;
  private final LinePlan plan;
  private final Hydraulics result;

  ProfileTable(Page page, LinePlan plan) {
    this.page = page;
    this.plan = plan;
    this.result = plan.hydraulics();
  }

  /** Table and chart stand on one printed page where they fit on one. */
  void write() {
    if (result.profile().size() <= ROWS_BESIDE_A_CHART) {
      page.together(
          () -> {
            table();
            charts();
          });
    } else {
      page.newSheetOfPaper();
      table();
      page.together(this::charts);
    }
  }

  private void table() {
    page.gap(6);
    page.next();
    page.span(0, page.lastColumn(), "Pressure along the line", Look.SECTION);
    OptionalDouble limit = PressureLimit.lowestPsi(plan);
    heading(limit.isPresent());
    int first = page.rowNumber() + 1;
    List<Station> stations = result.profile();
    for (int i = 0; i < stations.size(); i++) {
      station(stations.get(i), StationNames.shown(stations, i), first, limit);
      if (i == 0) {
        page.named(1, FIRST_ROW);
      }
    }
    page.named(1, LAST_ROW);
  }

  private void charts() {
    page.gap(4);
    page.next();
    page.named(0, CHART_ROW);
    for (int i = 0; i < ProfileChart.ROWS_HIGH; i++) {
      page.gap(14);
    }
    if (uneven(result.profile())) {
      page.next();
      page.named(0, HEIGHT_CHART_ROW);
      for (int i = 0; i < ProfileChart.HEIGHT_ROWS_HIGH; i++) {
        page.gap(14);
      }
    }
  }

  /** What fittings take now over what they took as planned, as formulas write it. */
  static String fittingsNow(LinePlan plan) {
    double plannedPsi = plan.hydraulics().adapterLossPsi() + plan.hydraulics().applianceLossPsi();
    return plannedPsi == 0
        ? "0"
        : "(adapter_psi+appliance_psi)/" + HydraulicsSheet.exact(plannedPsi);
  }

  /** Whether the ground is more than one slope, so that it is worth drawing. */
  private static boolean uneven(List<Station> stations) {
    Station end = stations.get(stations.size() - 1);
    double slope = end.distanceFt() == 0 ? 0 : end.elevationFt() / end.distanceFt();
    return stations.stream()
        .anyMatch(at -> Math.abs(at.elevationFt() - slope * at.distanceFt()) > UNEVEN_FT);
  }

  private void heading(boolean limited) {
    page.next();
    page.text(0, "Station", Look.HEAD)
        .text(1, "Hose laid, ft", Look.HEAD_RIGHT)
        .text(2, "Height, ft", Look.HEAD_RIGHT)
        .text(3, "Fitting loss as planned, psi", Look.HEAD_RIGHT)
        .text(4, "Flowing, psi", Look.HEAD_RIGHT)
        .text(5, "Nozzle shut, psi", Look.HEAD_RIGHT)
        .text(6, "Needed at end, psi", Look.HEAD_RIGHT);
    if (limited) {
      page.text(7, "Lowest rating, psi", Look.HEAD_RIGHT);
    }
  }

  private void station(Station station, String name, int first, OptionalDouble limit) {
    int row = page.next();
    String climbed = "(C" + row + "-C$" + first + ")*psi_per_ft";
    page.text(0, name, Look.BODY)
        .number(1, station.distanceFt(), loose(station.distanceFt()))
        .number(2, station.elevationFt(), loose(station.elevationFt()))
        .number(3, fittingsPsi(plan, station), Look.BODY_NUMBER)
        .formula(
            4,
            "start_psi-"
                + frictionUpTo("B" + row)
                + "-"
                + climbed
                + "-D"
                + row
                + "*"
                + fittingsNow(plan),
            Look.BODY_NUMBER)
        .formula(5, "closed_source_psi-" + climbed, Look.BODY_NUMBER)
        .formula(6, "need_psi", Look.BODY_NUMBER);
    limit.ifPresent(psi -> page.number(7, psi, Look.BODY_NUMBER));
  }

  private static Look loose(double value) {
    return BigDecimal.valueOf(value).scale() <= 2 ? Look.BODY_LOOSE : Look.BODY_NUMBER;
  }

  /** What hose takes up to where so much of it is laid; the attack lines come after the first. */
  private String frictionUpTo(String laid) {
    return frictionUpTo(plan, laid, "-");
  }

  /**
   * The same of a plan, as it stands behind a sign.
   *
   * @param sign that sign
   */
  static String frictionUpTo(LinePlan plan, String laid, String sign) {
    return plan.layout().branchLeg().isEmpty()
        ? "friction_c*(line_gpm/100)^2*" + laid + "/100"
        : "friction_c*(line_gpm/100)^2*MIN("
            + laid
            + ",laid_ft)/100"
            + sign
            + "attack_c*(attack_gpm/100)^2*MAX("
            + laid
            + "-laid_ft,0)/100";
  }

  private static double frictionPsi(LinePlan plan, double laidFt) {
    double psi = 0;
    double beforeFt = 0;
    for (Leg leg : plan.layout().hoseLegs()) {
      double lengthFt = HydraulicsSheet.laidFt(leg);
      double soFarFt = Math.max(0, Math.min(laidFt - beforeFt, lengthFt));
      psi += leg.water().friction().lossPsi() * soFarFt / lengthFt;
      beforeFt += lengthFt;
    }
    return psi;
  }

  /** What fittings took up to a station: the drop that hose and height do not explain. */
  static double fittingsPsi(LinePlan plan, Station station) {
    Station source = plan.hydraulics().profile().get(0);
    double hose = frictionPsi(plan, station.distanceFt());
    double psiPerFt = HydraulicsSheet.psiPerFt(plan.hydraulics());
    double climbed = (station.elevationFt() - source.elevationFt()) * psiPerFt;
    double rest = source.flowingPsi() - station.flowingPsi() - hose - climbed;
    return Math.round(rest * 1e6) / 1e6;
  }
}
