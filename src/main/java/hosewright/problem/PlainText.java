package hosewright.problem;

import java.util.List;
import java.util.Optional;

/**
 * Which text may be kept and shown: what a reader sees, in the order in which it stands.
 *
 * <p>Refused are characters that steer a terminal, that no XML document may hold, or that hide
 * letters or turn their order, so that a price or an item reads as another. Tabs and line breaks
 * are text; the two joiners are too, because some languages are not spelt without them.
 */
public final class PlainText {
  /** What a text may be, in words. */
  public static final String ALLOWED =
      "text without control characters and without marks that hide letters or turn their order";

  private static final int NON_JOINER = 0x200C;
  private static final int JOINER = 0x200D;

  private PlainText() {}

  /** Whether all of a text may be kept. */
  public static boolean is(String text) {
    for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
      if (refused(text, at)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Why a text may not be kept; empty where it may.
   *
   * @param field where it was given
   */
  public static Optional<Problem> refusal(String field, String text) {
    return is(text)
        ? Optional.empty()
        : Optional.of(new Problem(field, text, ALLOWED, without(text).strip()));
  }

  /** The text with what may not be kept left out. */
  public static String without(String text) {
    return is(text) ? text : each(text, character -> "");
  }

  /** The text with what may not be shown spelt out, such as {@code {U+001B}}. */
  public static String spelt(String text) {
    return is(text) ? text : each(text, "{U+%04X}"::formatted);
  }

  /** A JSON document with what may not be shown written as JSON escapes it: the same document. */
  public static String inJson(String document) {
    return is(document)
        ? document
        : each(
            document,
            character -> {
              StringBuilder escaped = new StringBuilder();
              for (char unit : Character.toChars(character)) {
                escaped.append("\\u%04x".formatted((int) unit));
              }
              return escaped.toString();
            });
  }

  /** What stands in the place of a refused character. */
  private interface Stand {
    String of(int character);
  }

  private static String each(String text, Stand stand) {
    StringBuilder plain = new StringBuilder();
    int character;
    for (int at = 0; at < text.length(); at += Character.charCount(character)) {
      character = text.codePointAt(at);
      if (refused(text, at)) {
        plain.append(stand.of(character));
      } else {
        plain.appendCodePoint(character);
      }
    }
    return plain.toString();
  }

  /**
   * The text, if it is plain.
   *
   * @throws BadInputException when it is not
   */
  public static String require(String field, String text) {
    Optional<Problem> problem = refusal(field, text);
    if (problem.isPresent()) {
      throw new BadInputException(List.of(problem.get()));
    }
    return text;
  }

  private static boolean refused(String text, int at) {
    int character = text.codePointAt(at);
    if (character == '\r') {
      // Alone it goes back over what was printed before it.
      return !text.startsWith("\n", at + 1);
    }
    if (character == '\n' || character == '\t' || character == NON_JOINER || character == JOINER) {
      return false;
    }
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> isNoCharacter(character);
    };
  }

  /** Code points that Unicode keeps free of characters for good; XML forbids two of them. */
  private static boolean isNoCharacter(int codePoint) {
    return (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
  }
}
