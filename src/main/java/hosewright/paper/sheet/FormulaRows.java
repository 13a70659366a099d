package hosewright.paper.sheet;

import java.math.BigDecimal;

/** Rows that each hold one named figure: label, value, unit, and the formula in words. */
public final class FormulaRows {
  private static final int LABEL = 0;
  private static final int VALUE = 1;
  private static final int UNIT = 2;
  private static final int WORDS = 3;

  private final Page page;

  public FormulaRows(Page page) {
    this.page = page;
  }

  public void section(String heading) {
    page.gap(8);
    page.next();
    page.span(LABEL, page.lastColumn(), heading, Look.SECTION);
  }

  /** A figure the reader may change. */
  public void input(String label, double value, String unit, String name, String words) {
    row(label, unit, words).number(VALUE, value, input(value)).named(VALUE, name);
  }

  /** Short figures stand as they are; of long ones as much is shown as matters. */
  private static Look input(double value) {
    return Math.abs(value) < 1 || BigDecimal.valueOf(value).scale() <= 3
        ? Look.NUMBER_INPUT
        : Look.LONG_INPUT;
  }

  /** A place for a figure the reader may give. */
  public void emptyInput(String label, String unit, String name, String words) {
    row(label, unit, words).text(VALUE, "", Look.NUMBER_INPUT).named(VALUE, name);
  }

  /** A figure of the plan that stays as it is. */
  public void fixed(String label, double value, String unit, String name, String words) {
    row(label, unit, words).number(VALUE, value, Look.NUMBER).named(VALUE, name);
  }

  public void formula(String label, String formula, String unit, String name, String words) {
    formula(label, formula, unit, name, words, Look.NUMBER);
  }

  public void formula(
      String label, String formula, String unit, String name, String words, Look look) {
    row(label, unit, words).formula(VALUE, formula, look).named(VALUE, name);
  }

  private Page row(String label, String unit, String words) {
    page.next();
    return page.text(LABEL, label, Look.TEXT)
        .text(UNIT, unit, Look.INDENTED)
        .span(WORDS, page.lastColumn(), words, Look.TEXT);
  }
}
