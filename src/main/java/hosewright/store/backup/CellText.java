package hosewright.store.backup;

import java.util.HexFormat;

/**
 * Text of a cell on one line and unmistakable: {@code \\} is a backslash, {@code \t}, {@code \n}
 * and {@code \r} a tab and line ends, {@code \}{@code uXXXX} any other control, and half a
 * character that UTF-8 cannot write.
 */
final class CellText {
  private CellText() {}

  static String write(String text) {
    StringBuilder cell = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '\\' -> cell.append("\\\\");
        case '\t' -> cell.append("\\t");
        case '\n' -> cell.append("\\n");
        case '\r' -> cell.append("\\r");
        default -> {
          if (Character.isISOControl(c) || isHalf(text, i)) {
            cell.append("\\u%04x".formatted((int) c));
          } else {
            cell.append(c);
          }
        }
      }
    }
    return cell.toString();
  }

  private static boolean isHalf(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }

  /**
   * The text again.
   *
   * @throws IllegalArgumentException when no text is written so
   */
  static String read(String cell) {
    if (cell.indexOf('\\') < 0) {
      return cell;
    }
    StringBuilder text = new StringBuilder(cell.length());
    int i = 0;
    while (i < cell.length()) {
      char c = cell.charAt(i++);
      if (c != '\\') {
        text.append(c);
        continue;
      }
      char escaped = i < cell.length() ? cell.charAt(i++) : ' ';
      switch (escaped) {
        case '\\' -> text.append('\\');
        case 't' -> text.append('\t');
        case 'n' -> text.append('\n');
        case 'r' -> text.append('\r');
        case 'u' -> {
          if (i + 4 > cell.length()) {
            throw new IllegalArgumentException(cell);
          }
          text.append((char) HexFormat.fromHexDigits(cell, i, i + 4));
          i += 4;
        }
        default -> throw new IllegalArgumentException(cell);
      }
    }
    return text.toString();
  }
}
