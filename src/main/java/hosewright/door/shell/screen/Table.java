package hosewright.door.shell.screen;

import static org.springframework.shell.jline.tui.table.BorderSpecification.BOTTOM;
import static org.springframework.shell.jline.tui.table.BorderSpecification.INNER_VERTICAL;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.shell.jline.tui.table.ArrayTableModel;
import org.springframework.shell.jline.tui.table.BorderStyle;
import org.springframework.shell.jline.tui.table.CellMatchers;
import org.springframework.shell.jline.tui.table.NoWrapSizeConstraints;
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

  /** The table as lines of text, without a final line end. */
  public String on(Screen screen) {
    Object[][] cells = new Object[rows.size() + 1][];
    cells[0] = headings;
    for (int i = 0; i < rows.size(); i++) {
      cells[i + 1] = rows.get(i);
    }
    TableBuilder table = new TableBuilder(new ArrayTableModel(cells));
    for (int column : numbers) {
      table
          .on(CellMatchers.column(column))
          .addAligner(SimpleHorizontalAligner.right)
          .addSizer(new NoWrapSizeConstraints());
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
}
