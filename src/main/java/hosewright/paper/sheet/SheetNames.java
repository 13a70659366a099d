package hosewright.paper.sheet;

import java.util.List;
import java.util.Set;

/** The sheets of a quote's workbooks, as their tabs and formulas name them. */
public final class SheetNames {
  public static final String QUOTE = "Quote";
  public static final String JOINTS = "Joints";
  public static final String HYDRAULICS = "Hydraulics";
  public static final String CHECKS = "Checks";

  public static final String PICKING = "Picking";
  public static final String BREAKS = "Breaks";
  public static final String ALTERNATIVES = "Alternatives";
  public static final String FRICTION = "Friction";

  /** Sheets of the buyer's workbook of which each group that is laid has its own. */
  public static final List<String> OF_A_GROUP = List.of(JOINTS, HYDRAULICS, CHECKS);

  /** Sheets of the buyer's workbook that print on paper turned sideways. */
  public static final Set<String> WIDE = Set.of(JOINTS, CHECKS);

  private SheetNames() {}
}
