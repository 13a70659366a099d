package hosewright.door.shell.screen;

import static org.springframework.shell.jline.tui.table.BorderSpecification.BOTTOM;
import static org.springframework.shell.jline.tui.table.BorderSpecification.INNER_VERTICAL;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.text.WordUtils;
import org.springframework.shell.jline.tui.table.AbsoluteWidthSizeConstraints;
import org.springframework.shell.jline.tui.table.ArrayTableModel;
import org.springframework.shell.jline.tui.table.BorderStyle;
import org.springframework.shell.jline.tui.table.CellMatchers;
import org.springframework.shell.jline.tui.table.SimpleHorizontalAligner;
import org.springframework.shell.jline.tui.table.TableBuilder;

/** Rows under headings that fit the screen: numbers line up on the right, long text wraps. */
public final class Table {
  private final String[] headings;
  private final Set<Integer> numbers = new HashSet<>();
  private final List<String[]> rows = new ArrayList<>();

  private Table(String[] headings) {
    this.headings = headings;
  }

  public static Table of(String... headings) {
    return new Table(headings.clone());
  }

  /** Columns, 0 for the first, whose cells line up on the right and are never wrapped. */
  public Table numbers(int... columns) {
    for (int column : columns) {
      numbers.add(column);
    }
    return this;
  }

  /**
   * Adds a row.
   *
   * @throws IllegalArgumentException when it has not one cell for each heading
   */
  public Table row(Object... cells) {
    if (cells.length != headings.length) {
      throw new IllegalArgumentException(
          "a row of " + cells.length + " cells under " + headings.length + " headings");
    }
    String[] row = new String[cells.length];
    for (int i = 0; i < cells.length; i++) {
      row[i] = String.valueOf(cells[i]);
    }
    rows.add(row);
    return this;
  }

  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * The table as lines of text, without a final line end; row by row as a list where the screen is
   * too narrow for columns.
   */
  public String on(Screen screen) {
    int[] widths = new ColumnWidths(headings, rows, numbers).on(screen.width());
    if (widths.length == 0) {
      return rows.stream()
          .map(row -> listed(row, screen.width()))
          .collect(Collectors.joining("\n"));
    }
    Object[][] cells = new Object[rows.size() + 1][];
    cells[0] = headings;
    for (int i = 0; i < rows.size(); i++) {
      cells[i + 1] = rows.get(i);
    }
    TableBuilder table = new TableBuilder(new ArrayTableModel(cells));
    for (int column = 0; column < headings.length; column++) {
      table
          .on(CellMatchers.column(column))
          .addSizer(new AbsoluteWidthSizeConstraints(widths[column]));
    }
    for (int column : numbers) {
      table.on(CellMatchers.column(column)).addAligner(SimpleHorizontalAligner.right);
    }
    table
        .paintBorder(BorderStyle.air, INNER_VERTICAL)
        .fromTopLeft()
        .toBottomRight()
        .paintBorder(BorderStyle.oldschool, BOTTOM)
        .fromTopLeft()
        .toRowColumn(1, headings.length);
    return table
        .build()
        .render(screen.width())
        .lines()
        .map(String::stripTrailing)
        .collect(Collectors.joining("\n"));
  }

  /** A row's first cell, and below it what all others say under their headings. */
  private String listed(String[] row, int width) {
    String first = headings[0].isEmpty() || headings[0].equals("#") ? row[0] : named(0, row);
    String others =
        IntStream.range(1, row.length)
            .filter(column -> !row[column].isBlank())
            .mapToObj(column -> named(column, row))
            .collect(Collectors.joining("; "));
    return WordUtils.wrap(first, width - 2, "\n  ", false)
        + (others.isEmpty() ? "" : "\n  " + WordUtils.wrap(others, width - 2, "\n  ", false));
  }

  private String named(int column, String[] row) {
    return (headings[column].isEmpty() ? "" : headings[column] + ": ") + row[column];
  }
}
