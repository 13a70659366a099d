package hosewright.intake;

import hosewright.csv.CellRows;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Turns the markup of one sheet into rows of text. */
final class XlsxSheetHandler extends DefaultHandler {
  private static final int MOST_CELLS = 1_000;

  /** The longest text that a spreadsheet keeps in a cell. */
  private static final int LONGEST = 32_767;

  private final XlsxCells cells;
  private final CellRows.Taker taker;
  private final Runnable tag;
  private final List<String> row = new ArrayList<>();
  private final StringBuilder value = new StringBuilder();
  private final StringBuilder formula = new StringBuilder();
  private StringBuilder open;
  private boolean valued;
  private int width;
  private long line;
  private int column;
  private String type = "";
  private String style = "";

  /**
   * @param tag told that another tag was read
   */
  XlsxSheetHandler(XlsxCells cells, CellRows.Taker taker, Runnable tag) {
    this.cells = cells;
    this.taker = taker;
    this.tag = tag;
  }

  /** No more rows are wanted. */
  static final class EnoughException extends SAXException {
    private static final long serialVersionUID = 1L;
  }

  /** Not the sheet is at fault but who takes its rows. */
  static final class TakerFailedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TakerFailedException(RuntimeException cause) {
      super(cause);
    }
  }

  @Override
  public void startElement(String uri, String local, String name, Attributes attributes) {
    tag.run();
    switch (local) {
      case "row" -> {
        String at = attributes.getValue("r");
        line = at == null ? line + 1 : Long.parseLong(at);
        row.clear();
        column = -1;
      }
      case "c" -> {
        String at = attributes.getValue("r");
        column = at == null ? column + 1 : new CellReference(at).getCol();
        type = attribute(attributes, "t");
        style = attribute(attributes, "s");
        value.setLength(0);
        formula.setLength(0);
        valued = false;
      }
      case "v", "t" -> {
        open = value;
        valued = true;
      }
      case "f" -> open = formula;
      // Shown above a text as its pronunciation, and no part of it.
      case "rPh" -> open = null;
      default -> {}
    }
  }

  private static String attribute(Attributes attributes, String name) {
    String found = attributes.getValue(name);
    return found == null ? "" : found;
  }

  @Override
  public void characters(char[] text, int start, int length) {
    tag.run();
    if (open != null) {
      open.append(text, start, length);
      if (open.length() > LONGEST) {
        throw refused("at most " + LONGEST + " characters in a cell");
      }
    }
  }

  @Override
  public void endElement(String uri, String local, String name) throws SAXException {
    switch (local) {
      case "v", "t", "f" -> open = null;
      case "c" -> endCell();
      case "row" -> endRow();
      default -> {}
    }
  }

  private void endCell() {
    if (column < 0 || column >= MOST_CELLS) {
      throw refused("at most " + MOST_CELLS + " columns");
    }
    while (row.size() < column) {
      row.add("");
    }
    String text = text().strip();
    if (column < row.size()) {
      row.set(column, text);
    } else {
      row.add(text);
    }
  }

  private String text() {
    String written = value.toString();
    if (!valued && formula.length() > 0) {
      return "=" + formula;
    }
    if (written.isEmpty()) {
      return "";
    }
    try {
      return switch (type) {
        case "s" -> cells.text(written.strip());
        case "b" -> written.strip().equals("1") ? "yes" : "no";
        case "", "n" -> cells.number(written.strip(), style);
        default -> written;
      };
    } catch (NumberFormatException e) {
      throw refused("numbers that are numbers, not '" + written + "'");
    }
  }

  private void endRow() throws EnoughException {
    while (!row.isEmpty() && row.get(row.size() - 1).isEmpty()) {
      row.remove(row.size() - 1);
    }
    if (row.isEmpty()) {
      return;
    }
    // A sheet leaves out the empty cells at the end of a row.
    while (row.size() < width) {
      row.add("");
    }
    if (width == 0) {
      width = row.size();
    }
    if (!taken(CellRows.Row.of(line, List.copyOf(row)))) {
      throw new EnoughException();
    }
  }

  private boolean taken(CellRows.Row whole) {
    try {
      return taker.take(whole);
    } catch (BadInputException e) {
      throw e;
    } catch (RuntimeException e) {
      throw new TakerFailedException(e);
    }
  }

  private BadInputException refused(String allowed) {
    return new BadInputException(
        "workbook", "line " + line, "a sheet with " + allowed + "; or save it as CSV");
  }
}
