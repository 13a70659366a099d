package hosewright.paper.fleet;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetBudget.Survival;
import hosewright.fleet.budget.KaplanMeier.Step;
import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How long the agency's hose has lasted: the product limit and the fitted law beside it. */
final class BudgetSurvivalSheet {
  static final int[] WIDTHS = {12, 12, 12, 14, 14, 14};

  /** More ages than this are thinned out: a chart shows no more, and a sheet need not. */
  private static final int MOST_ROWS = 200;

  private final Page page;
  private final FleetBudget budget;

  BudgetSurvivalSheet(Page page, FleetBudget budget) {
    this.page = page;
    this.budget = budget;
  }

  void write() {
    Survival survival = budget.survival();
    page.next();
    page.span(0, page.lastColumn(), "How long hose lasts here", Look.TITLE);
    page.next();
    page.span(
        0,
        page.lastColumn(),
        String.format(
                Locale.ROOT,
                "%,d sections tell something; %,d of them wore out.%s",
                survival.history().lives(),
                survival.history().failures(),
                survival.reason().isEmpty() ? "" : " No law was fitted: " + survival.reason() + ".")
            + " The product limit is given life at the youngest age on record, the law from new.",
        Look.TEXT);
    survival.law().shape().ifPresent(shape -> figure("Weibull shape", shape, "weibull_shape"));
    survival
        .law()
        .scaleYears()
        .ifPresent(scale -> figure("Weibull scale, years", scale, "weibull_scale"));
    for (String convention : survival.conventions()) {
      page.next();
      page.span(0, page.lastColumn(), convention, Look.SMALL);
    }
    table(survival);
  }

  private void figure(String label, double value, String name) {
    page.next();
    page.span(0, 2, label, Look.LABEL).number(3, value, Look.NUMBER_INPUT).named(3, name);
  }

  private void table(Survival survival) {
    int heading =
        page.heading(
            List.of(
                "Age, years",
                "At risk",
                "Failed",
                "Product limit",
                "Standard error",
                "Weibull law"),
            Set.of(0, 1, 2, 3, 4, 5));
    List<Step> steps = survival.productLimit();
    int stride = Math.max(1, (steps.size() + MOST_ROWS - 1) / MOST_ROWS);
    for (int i = 0; i < steps.size(); i += stride) {
      Step step = steps.get(i);
      int row = page.next();
      page.number(0, step.age(), Look.BODY_NUMBER)
          .number(1, step.atRisk(), Look.BODY_COUNT)
          .number(2, step.failures(), Look.BODY_COUNT)
          .number(3, step.survival(), Look.BODY_FINE)
          .number(4, step.standardError(), Look.BODY_FINE);
      if (survival.law().shape().isPresent()) {
        page.formula(5, "EXP(-((A%d/weibull_scale)^weibull_shape))".formatted(row), Look.BODY_FINE);
      }
    }
    page.finished(heading);
  }

  /** Draws both curves beside the table, once the formulas have values. */
  static void chart(Page page, FleetBudget budget) {
    int last = page.rowNumber() - 1;
    List<Step> steps = budget.survival().productLimit();
    if (steps.size() < 2) {
      return;
    }
    int stride = Math.max(1, (steps.size() + MOST_ROWS - 1) / MOST_ROWS);
    int first = last - (steps.size() - 1) / stride;
    XSSFSheet sheet = page.sheet();
    XSSFChart chart =
        sheet
            .createDrawingPatriarch()
            .createChart(sheet.createDrawingPatriarch().createAnchor(0, 0, 0, 0, 7, 2, 16, 24));
    chart.setTitleText("Fraction that outlives an age");
    chart.setTitleOverlay(false);
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    XDDFValueAxis age = chart.createValueAxis(AxisPosition.BOTTOM);
    age.setTitle("Age, years");
    age.setMinimum(0);
    age.setNumberFormat("0");
    XDDFValueAxis fraction = chart.createValueAxis(AxisPosition.LEFT);
    fraction.setMinimum(0);
    fraction.setMaximum(1);
    fraction.setNumberFormat("0.0");
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, age, fraction);
    data.setStyle(ScatterStyle.LINE);
    new Curve(3, "Product limit", PresetLineDash.SOLID, 1.0).add(data, sheet, first, last);
    if (budget.survival().law().shape().isPresent()) {
      new Curve(5, "Weibull law", PresetLineDash.DASH, 2.0).add(data, sheet, first, last);
    }
    chart.plot(data);
  }

  /** One curve, of the fractions in a column over the ages in the first. */
  private record Curve(int column, String name, PresetLineDash dash, double widthPt) {
    void add(XDDFScatterChartData data, XSSFSheet sheet, int first, int last) {
      XDDFScatterChartData.Series series =
          (XDDFScatterChartData.Series)
              data.addSeries(
                  XDDFDataSourcesFactory.fromNumericCellRange(
                      sheet, new CellRangeAddress(first, last, 0, 0)),
                  XDDFDataSourcesFactory.fromNumericCellRange(
                      sheet, new CellRangeAddress(first, last, column, column)));
      series.setTitle(name, null);
      series.setSmooth(false);
      series.setMarkerStyle(MarkerStyle.NONE);
      XDDFLineProperties line =
          new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.BLACK)));
      line.setWidth(widthPt);
      // Dashes tell the two apart on a black-and-white printer.
      line.setPresetDash(new XDDFPresetLineDash(dash));
      series.setLineProperties(line);
    }
  }
}
