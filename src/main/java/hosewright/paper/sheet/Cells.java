package hosewright.paper.sheet;

import hosewright.problem.PlainText;
import org.apache.poi.ss.util.CellReference;

/** How cells are named, and which text a spreadsheet would misread. */
public final class Cells {
  private Cells() {}

  public static String letter(int column) {
    return CellReference.convertNumToColString(column);
  }

  /**
   * Whether a spreadsheet that was handed this text bare would run it as a formula.
   *
   * <p>Source: the list of leading characters in the OWASP note on CSV injection.
   */
  public static boolean looksLikeFormula(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
  }

  /** Text for a cell of comma-separated values: never a formula, never more than text. */
  public static String inCsv(String text) {
    String plain = PlainText.spelt(text);
    return looksLikeFormula(plain) ? "'" + plain : plain;
  }

  /** Text for a page header, where an ampersand starts a command. */
  static String inHeader(String text) {
    return PlainText.spelt(text).replace("&", "&&");
  }
}
