package hosewright.paper.fleet;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Native charts of a budget's years; dark and light tell the methods apart without colour. */
final class BudgetCharts {
  private static final int ROWS_HIGH = 17;
  private static final int COLUMNS_WIDE = 8;

  private final XSSFSheet sheet;
  private final int firstRow;
  private final int lastRow;

  /**
   * @param firstRow index, from 0, of the first year's row
   * @param lastRow index of the last year's row
   */
  BudgetCharts(XSSFSheet sheet, int firstRow, int lastRow) {
    this.sheet = sheet;
    this.firstRow = firstRow;
    this.lastRow = lastRow;
  }

  /**
   * Columns over the years.
   *
   * @param second column of the other method; negative for none
   */
  void columns(int atRow, String title, int first, int second, String secondName, String format) {
    XSSFChart chart =
        sheet
            .createDrawingPatriarch()
            .createChart(
                sheet
                    .createDrawingPatriarch()
                    .createAnchor(0, 0, 0, 0, 0, atRow, COLUMNS_WIDE, atRow + ROWS_HIGH));
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    XDDFCategoryAxis years = chart.createCategoryAxis(AxisPosition.BOTTOM);
    XDDFValueAxis values = chart.createValueAxis(AxisPosition.LEFT);
    values.setCrosses(AxisCrosses.AUTO_ZERO);
    // Without this the first and last columns are cut in half by the axis.
    values.setCrossBetween(AxisCrossBetween.BETWEEN);
    values.setMinimum(0);
    values.setNumberFormat(format);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, years, values);
    data.setBarDirection(BarDirection.COL);
    data.setVaryColors(false);
    series(data, first, "as bought", PresetColor.DIM_GRAY);
    if (second >= 0) {
      chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
      series(data, second, secondName, PresetColor.LIGHT_GRAY);
    }
    chart.plot(data);
  }

  private void series(XDDFBarChartData data, int column, String name, PresetColor fill) {
    XDDFChartData.Series series =
        data.addSeries(
            XDDFDataSourcesFactory.fromStringCellRange(
                sheet, new CellRangeAddress(firstRow, lastRow, 0, 0)),
            XDDFDataSourcesFactory.fromNumericCellRange(
                sheet, new CellRangeAddress(firstRow, lastRow, column, column)));
    series.setTitle(name, null);
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(fill)));
    series.setShapeProperties(shape);
  }
}
