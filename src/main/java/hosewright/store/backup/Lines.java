package hosewright.store.backup;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** The lines of a part, each ended by a line feed and no longer than a line may be. */
final class Lines {
  private final BufferedReader text;
  private final int most;
  private int number;

  /** The line is too long, or the last one has no end. */
  static final class BadLine extends IOException {
    private static final long serialVersionUID = 1L;

    BadLine(String why) {
      super(why);
    }
  }

  /**
   * @param most characters of a line
   */
  Lines(InputStream part, int most) {
    // What is not UTF-8 is refused, not replaced.
    text =
        new BufferedReader(
            new InputStreamReader(
                part,
                StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)),
            1 << 16);
    this.most = most;
  }

  /** The next line; null after the last. */
  String next() throws IOException {
    StringBuilder line = new StringBuilder();
    number++;
    for (int c = text.read(); c != '\n'; c = text.read()) {
      if (c < 0) {
        if (line.isEmpty()) {
          return null;
        }
        throw new BadLine("its last line is cut short");
      }
      if (line.length() == most) {
        throw new BadLine("its line %d is longer than %d characters".formatted(number, most));
      }
      line.append((char) c);
    }
    return line.toString();
  }

  /** The number of the line read last, from 1. */
  int number() {
    return number;
  }
}
