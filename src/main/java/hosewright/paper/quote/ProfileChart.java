package hosewright.paper.quote;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Pressure over hose laid as a native chart.
 *
 * <p>Stations are not evenly spaced, so the lines are drawn over true distance. Dashes and marks
 * tell them apart on a black-and-white printer.
 */
final class ProfileChart {
  static final int ROWS_HIGH = 22;

  private final XSSFSheet sheet;
  private final int first;
  private final int last;

  private ProfileChart(XSSFSheet sheet, int first, int last) {
    this.sheet = sheet;
    this.first = first;
    this.last = last;
  }

  /** Draws the chart under each profile table, whose formulas must have been evaluated. */
  static void draw(XSSFWorkbook workbook) {
    for (XSSFName at : workbook.getNames(ProfileTable.CHART_ROW)) {
      XSSFSheet sheet =
          workbook.getSheet(new CellReference(at.getRefersToFormula()).getSheetName());
      int first = row(workbook, ProfileTable.FIRST_ROW, at.getSheetIndex());
      int last = row(workbook, ProfileTable.LAST_ROW, at.getSheetIndex());
      new ProfileChart(sheet, first, last)
          .draw(row(workbook, ProfileTable.CHART_ROW, at.getSheetIndex()));
    }
  }

  private void draw(int atRow) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFChart chart =
        drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, atRow, 8, atRow + ROWS_HIGH));
    chart.setAutoTitleDeleted(true);
    XDDFChartLegend legend = chart.getOrAddLegend();
    legend.setPosition(LegendPosition.BOTTOM);
    XDDFValueAxis distance = chart.createValueAxis(AxisPosition.BOTTOM);
    distance.setTitle("Hose laid from the source, ft");
    XDDFValueAxis pressure = chart.createValueAxis(AxisPosition.LEFT);
    pressure.setTitle("Gauge pressure, psi");
    pressure.setCrosses(AxisCrosses.MIN);
    distance.setCrosses(AxisCrosses.MIN);
    distance.setMinimum(0);
    distance.setNumberFormat("0");
    pressure.setNumberFormat("0");
    plain(distance);
    plain(pressure);
    XDDFScatterChartData lines =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, distance, pressure);
    lines.setStyle(ScatterStyle.LINE_MARKER);
    series(lines, 4, "Flowing", PresetLineDash.SOLID, 2.25, MarkerStyle.CIRCLE);
    series(lines, 5, "Closed", PresetLineDash.DASH, 1.5, MarkerStyle.SQUARE);
    series(lines, 6, "Needed at the end", PresetLineDash.DOT, 1.5, MarkerStyle.NONE);
    if (sheet.getRow(first).getCell(7) != null) {
      series(
          lines,
          7,
          "Lowest working pressure",
          PresetLineDash.LARGE_DASH_DOT,
          1.5,
          MarkerStyle.NONE);
    }
    chart.plot(lines);
  }

  private static void plain(XDDFValueAxis axis) {
    axis.getOrAddShapeProperties().setLineProperties(line(PresetColor.BLACK, 0.75));
    axis.getOrAddMajorGridProperties().setLineProperties(line(PresetColor.LIGHT_GRAY, 0.5));
  }

  private static XDDFLineProperties line(PresetColor colour, double widthPt) {
    XDDFLineProperties line =
        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
    line.setWidth(widthPt);
    return line;
  }

  private void series(
      XDDFScatterChartData lines,
      int column,
      String title,
      PresetLineDash dash,
      double widthPt,
      MarkerStyle marker) {
    XDDFScatterChartData.Series series =
        (XDDFScatterChartData.Series) lines.addSeries(values(1), values(column));
    series.setTitle(title, null);
    series.setSmooth(false);
    series.setMarkerStyle(marker);
    XDDFLineProperties line = line(PresetColor.BLACK, widthPt);
    line.setPresetDash(new XDDFPresetLineDash(dash));
    series.setLineProperties(line);
  }

  private XDDFNumericalDataSource<Double> values(int column) {
    return XDDFDataSourcesFactory.fromNumericCellRange(
        sheet, new CellRangeAddress(first, last, column, column));
  }

  /**
   * Row index, from 0, of a named cell.
   *
   * @param scope the sheet the name is kept to; -1 for the whole workbook
   */
  private static int row(XSSFWorkbook workbook, String name, int scope) {
    return workbook.getNames(name).stream()
        .filter(one -> one.getSheetIndex() == scope)
        .map(one -> new CellReference(one.getRefersToFormula()).getRow())
        .findFirst()
        .orElseThrow();
  }
}
