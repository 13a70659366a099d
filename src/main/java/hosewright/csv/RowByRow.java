package hosewright.csv;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * A text that is read row by row and gives up in a row that never ends, before it fills memory: a
 * quote mark that nobody closed makes one cell of all that follows it.
 */
final class RowByRow extends FilterReader {
  /** The longest row that a table of ours can need is a hundredth of this, characters. */
  static final int LONGEST_ROW = 1 << 18;

  /** No table of ours comes near it; so many blank lines alone take a minute. */
  private static final long LONGEST_TEXT = 1L << 31;

  private int sinceRow;
  private long all;

  RowByRow(Reader text) {
    super(text);
  }

  /** A row, or the whole, is longer than any that was meant. */
  static final class TooLongException extends IOException {
    private static final long serialVersionUID = 1L;

    TooLongException(String allowed) {
      super(allowed);
    }
  }

  /** Begins the next row. */
  void next() {
    sinceRow = 0;
  }

  @Override
  public int read() throws IOException {
    int character = super.read();
    counted(character < 0 ? 0 : 1);
    return character;
  }

  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    int count = super.read(into, offset, length);
    counted(Math.max(0, count));
    return count;
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private void counted(int characters) throws TooLongException {
    sinceRow += characters;
    all += characters;
    if (sinceRow > LONGEST_ROW) {
      throw new TooLongException(
          "rows of at most %d characters; is a double quote not closed?".formatted(LONGEST_ROW));
    }
    if (all > LONGEST_TEXT) {
      throw new TooLongException("a text of at most %d characters".formatted(LONGEST_TEXT));
    }
  }
}
