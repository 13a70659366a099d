package hosewright.paper.sheet;

import java.util.List;
import java.util.Set;

/** The sheets of a workbook, as their tabs and formulas name them. */
public final class SheetNames {
  public static final String QUOTE = "Quote";
  public static final String JOINTS = "Joints";
  public static final String HYDRAULICS = "Hydraulics";
  public static final String PICKING = "Picking";
  public static final String ALTERNATIVES = "Alternatives";
  public static final String CHECKS = "Checks";
  public static final String BREAKS = "Breaks";

  public static final List<String> IN_ORDER =
      List.of(QUOTE, JOINTS, HYDRAULICS, PICKING, ALTERNATIVES, CHECKS, BREAKS);

  /** Sheets of which each group that is laid has its own, where there are several. */
  public static final List<String> OF_A_GROUP = List.of(JOINTS, HYDRAULICS, ALTERNATIVES, CHECKS);

  /** Sheets that print on paper turned sideways. */
  public static final Set<String> WIDE = Set.of(JOINTS, PICKING, ALTERNATIVES, CHECKS);

  private SheetNames() {}
}
