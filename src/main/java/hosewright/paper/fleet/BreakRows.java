package hosewright.paper.fleet;

/**
 * The rows, both included, that hold the price breaks of one item on a sheet.
 *
 * @param quantities the column of the least quantities, as formulas name it
 * @param prices the column of the unit prices
 */
record BreakRows(String sheet, String quantities, String prices, int first, int last) {

  /** A formula for the unit price at a quantity that stands in a cell or is a formula itself. */
  String unitPriceAt(String quantity) {
    // Below the smallest break the first price holds.
    String asked = "MAX(%s,%s!$%s$%d)".formatted(quantity, sheet, quantities, first);
    return "LOOKUP(%s,%s,%s)".formatted(asked, range(quantities), range(prices));
  }

  private String range(String column) {
    return "%s!$%s$%d:$%s$%d".formatted(sheet, column, first, column, last);
  }
}
