package hosewright.paper.page;

/** Paper a workbook prints on. */
public enum Paper {
  LETTER,
  A4
}
