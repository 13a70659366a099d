package hosewright.command;

import java.util.ArrayList;
import java.util.List;

/** Rows under headings, columns as wide as they need, numbers to the right. */
final class TextTable {
  private static final String GAP = "  ";

  private final String[] headings;
  private final List<String[]> rows = new ArrayList<>();

  /**
   * @param headings a heading that ends in {@code >} stands over a column of numbers
   */
  TextTable(String... headings) {
    this.headings = headings;
  }

  TextTable row(Object... cells) {
    String[] texts = new String[headings.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = String.valueOf(cells[i]);
    }
    rows.add(texts);
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * The table, indented by two; the last column that is not a number wraps when the screen is
   * narrow.
   */
  String text(int width) {
    int[] widths = widths(width);
    StringBuilder text = new StringBuilder();
    String[] titles = new String[headings.length];
    for (int i = 0; i < titles.length; i++) {
      titles[i] = isNumber(i) ? headings[i].substring(0, headings[i].length() - 1) : headings[i];
    }
    line(text, titles, widths);
    rows.forEach(row -> line(text, row, widths));
    return text.toString();
  }

  private int[] widths(int width) {
    int[] widths = new int[headings.length];
    int all = GAP.length() * headings.length;
    int widest = 0;
    for (int i = 0; i < widths.length; i++) {
      widths[i] = headings[i].length() - (isNumber(i) ? 1 : 0);
      for (String[] row : rows) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
      all += widths[i];
      widest = widths[i] >= widths[widest] && !isNumber(i) ? i : widest;
    }
    int over = all - width;
    if (over > 0) {
      widths[widest] = Math.max(Math.min(16, widths[widest]), widths[widest] - over);
    }
    return widths;
  }

  private boolean isNumber(int column) {
    return headings[column].endsWith(">");
  }

  private void line(StringBuilder text, String[] cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < cells.length; i++) {
      wrapped.add(wrap(cells[i], widths[i]));
      height = Math.max(height, wrapped.get(i).size());
    }
    for (int y = 0; y < height; y++) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < cells.length; i++) {
        String cell = y < wrapped.get(i).size() ? wrapped.get(i).get(y) : "";
        String padding = " ".repeat(widths[i] - cell.length());
        line.append(GAP).append(isNumber(i) ? padding + cell : cell + padding);
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }

  private static List<String> wrap(String cell, int width) {
    if (cell.length() <= width) {
      return List.of(cell);
    }
    List<String> lines = new ArrayList<>();
    String rest = cell;
    while (rest.length() > width) {
      int space = rest.lastIndexOf(' ', width);
      int cut = space > 0 ? space : width;
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut).strip();
    }
    lines.add(rest);
    return lines;
  }
}
