package hosewright.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that gives up when more comes out of it than can be meant. */
final class LimitedStream extends FilterInputStream {
  private final long longestStretch;
  private long left;
  private long stretch;

  LimitedStream(InputStream in, long mostBytes) {
    this(in, mostBytes, mostBytes);
  }

  /**
   * A stream whose reader holds what it reads until it says that it goes on.
   *
   * @param longestStretchBytes the most that may be read until then
   */
  LimitedStream(InputStream in, long mostBytes, long longestStretchBytes) {
    super(in);
    this.left = mostBytes;
    this.longestStretch = longestStretchBytes;
  }

  /** Begins the next stretch. */
  void goOn() {
    stretch = 0;
  }

  /** More came out than was allowed. */
  static final class TooMuchException extends IOException {
    private static final long serialVersionUID = 1L;
  }

  @Override
  public int read() throws IOException {
    int value = super.read();
    return value < 0 ? value : counted(1, value);
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    int count = super.read(bytes, offset, length);
    return count < 0 ? count : counted(count, count);
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  private int counted(int bytes, int result) throws TooMuchException {
    left -= bytes;
    stretch += bytes;
    if (left < 0 || stretch > longestStretch) {
      throw new TooMuchException();
    }
    return result;
  }
}
