package hosewright.report;

import java.util.List;

/** The sheets of a workbook, as their tabs and formulas name them. */
final class SheetNames {
  static final String QUOTE = "Quote";
  static final String JOINTS = "Joints";
  static final String HYDRAULICS = "Hydraulics";
  static final String PICKING = "Picking";
  static final String CHECKS = "Checks";
  static final String BREAKS = "Breaks";

  static final List<String> IN_ORDER = List.of(QUOTE, JOINTS, HYDRAULICS, PICKING, CHECKS, BREAKS);

  private SheetNames() {}
}
