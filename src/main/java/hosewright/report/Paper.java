package hosewright.report;

/** Paper a workbook prints on. */
public enum Paper {
  LETTER,
  A4
}
