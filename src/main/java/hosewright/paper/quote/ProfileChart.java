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
  static final int ROWS_HIGH = 14;
  static final int HEIGHT_ROWS_HIGH = 12;

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
    for (int way = 0; draw(workbook, suffix(way)) || way == 0; way++) {
      // Ways are numbered from 1; a line of one way has no number.
    }
    for (XSSFName at : workbook.getNames(ProfileTable.HEIGHT_CHART_ROW)) {
      XSSFSheet sheet =
          workbook.getSheet(new CellReference(at.getRefersToFormula()).getSheetName());
      int first = row(workbook, ProfileTable.FIRST_ROW, at.getSheetIndex());
      int last = row(workbook, ProfileTable.LAST_ROW, at.getSheetIndex());
      new ProfileChart(sheet, first, last)
          .drawHeights(row(workbook, ProfileTable.HEIGHT_CHART_ROW, at.getSheetIndex()));
    }
  }

  /**
   * What the names of a profile end with.
   *
   * @param way of several the number, from 1; 0 for the one there is
   */
  static String suffix(int way) {
    return way == 0 ? "" : "_way_" + way;
  }

  private static boolean draw(XSSFWorkbook workbook, String suffix) {
    boolean any = false;
    for (XSSFName at : workbook.getNames(ProfileTable.CHART_ROW + suffix)) {
      any = true;
      XSSFSheet sheet =
          workbook.getSheet(new CellReference(at.getRefersToFormula()).getSheetName());
      int first = row(workbook, ProfileTable.FIRST_ROW + suffix, at.getSheetIndex());
      int last = row(workbook, ProfileTable.LAST_ROW + suffix, at.getSheetIndex());
      new ProfileChart(sheet, first, last)
          .draw(row(workbook, ProfileTable.CHART_ROW + suffix, at.getSheetIndex()));
    }
    return any;
  }

  /** The ground under the line, over the same distances. */
  private void drawHeights(int atRow) {
    XSSFChart chart = chart(atRow, HEIGHT_ROWS_HIGH);
    XDDFScatterChartData lines = over(chart, "Height over the source, ft");
    series(lines, 2, "Ground", PresetLineDash.SOLID, 2.25, MarkerStyle.NONE);
    chart.plot(lines);
  }

  private XSSFChart chart(int atRow, int rowsHigh) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFChart chart =
        drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, atRow, 8, atRow + rowsHigh));
    chart.setAutoTitleDeleted(true);
    return chart;
  }

  private void draw(int atRow) {
    XSSFChart chart = chart(atRow, ROWS_HIGH);
    XDDFChartLegend legend = chart.getOrAddLegend();
    legend.setPosition(LegendPosition.BOTTOM);
    XDDFScatterChartData lines = over(chart, "Gauge pressure, psi");
    series(lines, 4, "Flowing", PresetLineDash.SOLID, 2.25, MarkerStyle.CIRCLE);
    series(lines, 5, "Nozzle shut", PresetLineDash.DASH, 1.5, MarkerStyle.SQUARE);
    series(lines, 6, "Needed at the end", PresetLineDash.DOT, 1.5, MarkerStyle.NONE);
    if (sheet.getRow(first).getCell(7) != null) {
      series(lines, 7, "Lowest rating", PresetLineDash.LARGE_DASH_DOT, 1.5, MarkerStyle.NONE);
    }
    chart.plot(lines);
  }

  /** Empty axes, from the source on. */
  private static XDDFScatterChartData over(XSSFChart chart, String title) {
    XDDFValueAxis distance = chart.createValueAxis(AxisPosition.BOTTOM);
    distance.setTitle("Hose laid from the source, ft");
    XDDFValueAxis upright = chart.createValueAxis(AxisPosition.LEFT);
    upright.setTitle(title);
    upright.setCrosses(AxisCrosses.MIN);
    distance.setCrosses(AxisCrosses.MIN);
    distance.setMinimum(0);
    distance.setNumberFormat("0");
    upright.setNumberFormat("0");
    plain(distance);
    plain(upright);
    XDDFScatterChartData lines =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, distance, upright);
    lines.setStyle(ScatterStyle.LINE_MARKER);
    return lines;
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
