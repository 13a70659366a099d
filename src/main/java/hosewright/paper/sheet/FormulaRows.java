package hosewright.paper.sheet;

import java.math.BigDecimal;
import java.util.List;

/** Rows that each hold one named figure: label, value, unit, and the formula in words. */
public final class FormulaRows {
  private static final int LABEL = 0;
  private static final int VALUE = 1;
  private static final int UNIT = 2;
  private static final int WORDS = 3;

  private static final int SECOND_LABEL = 3;
  private static final int SECOND_VALUE = 6;
  private static final int SECOND_UNIT = 7;

  private final Page page;

  /** One named figure of a row that holds two. */
  public record Figure(String label, String unit, String name, Cell cell) {

    /** A figure the reader may change. */
    public static Figure input(String label, double value, String unit, String name) {
      return new Figure(
          label,
          unit,
          name,
          (page, column) -> page.number(column, value, FormulaRows.input(value)));
    }

    /** A place for a figure the reader may give. */
    public static Figure empty(String label, String unit, String name) {
      return new Figure(
          label, unit, name, (page, column) -> page.text(column, "", Look.NUMBER_INPUT));
    }

    /** A figure of the plan that stays as it is. */
    public static Figure fixed(String label, double value, String unit, String name) {
      return new Figure(
          label, unit, name, (page, column) -> page.number(column, value, Look.NUMBER));
    }

    public static Figure formula(String label, String formula, String unit, String name) {
      return new Figure(
          label, unit, name, (page, column) -> page.formula(column, formula, Look.NUMBER));
    }
  }

  /** Writes a figure into a column of the present row. */
  public interface Cell {
    void in(Page page, int column);
  }

  public FormulaRows(Page page) {
    this.page = page;
  }

  public void section(String heading) {
    page.gap(6);
    page.next();
    page.span(LABEL, page.lastColumn(), heading, Look.SECTION);
  }

  /** Figures two in a row, which takes eight columns. */
  public void inPairs(List<Figure> figures) {
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (i % 2 == 0) {
        page.next();
        page.text(LABEL, figure.label(), Look.TEXT).text(UNIT, figure.unit(), Look.INDENTED);
        figure.cell().in(page, VALUE);
        page.named(VALUE, figure.name());
      } else {
        page.span(SECOND_LABEL, SECOND_VALUE - 1, figure.label(), Look.INDENTED)
            .text(SECOND_UNIT, figure.unit(), Look.INDENTED);
        figure.cell().in(page, SECOND_VALUE);
        page.named(SECOND_VALUE, figure.name());
      }
    }
  }

  /** A sentence below figures. */
  public void note(String sentence) {
    page.next();
    page.span(LABEL, page.lastColumn(), sentence, Look.NOTE);
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
