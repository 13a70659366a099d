package hosewright.report;

import java.util.List;
import java.util.Set;

/** The sheets of a workbook, as their tabs and formulas name them. */
final class SheetNames {
  static final String QUOTE = "Quote";
  static final String JOINTS = "Joints";
  static final String HYDRAULICS = "Hydraulics";
  static final String PICKING = "Picking";
  static final String ALTERNATIVES = "Alternatives";
  static final String CHECKS = "Checks";
  static final String BREAKS = "Breaks";

  static final List<String> IN_ORDER =
      List.of(QUOTE, JOINTS, HYDRAULICS, PICKING, ALTERNATIVES, CHECKS, BREAKS);

  /** Sheets that print on paper turned sideways. */
  static final Set<String> WIDE = Set.of(JOINTS, PICKING, ALTERNATIVES, CHECKS);

  private SheetNames() {}
}
