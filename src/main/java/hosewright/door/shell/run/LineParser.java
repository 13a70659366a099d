package hosewright.door.shell.run;

import hosewright.door.shell.command.Words;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Shows the line editor where words begin and end, by the same rules as {@link Words}. */
final class LineParser implements Parser {

  @Override
  public ParsedLine parse(String line, int cursor, ParseContext context) {
    String upToCursor = line.substring(0, cursor);
    List<String> words = new ArrayList<>(wordsOf(upToCursor));
    boolean between = upToCursor.isEmpty() || Character.isWhitespace(upToCursor.charAt(cursor - 1));
    boolean open = !words.isEmpty() && isOpen(upToCursor);
    if ((between && !open) || words.isEmpty()) {
      words.add("");
    }
    String word = words.get(words.size() - 1);
    int rawLength = open ? cursor - openedAt(upToCursor) : word.length();
    return new Typed(line, cursor, List.copyOf(words), word, rawLength);
  }

  private static List<String> wordsOf(String text) {
    try {
      return Words.of(text);
    } catch (BadInputException unclosed) {
      int open = openedAt(text);
      List<String> words = new ArrayList<>(Words.of(text.substring(0, open)));
      words.add(text.substring(open + 1));
      return words;
    }
  }

  private static boolean isOpen(String text) {
    try {
      Words.of(text);
      return false;
    } catch (BadInputException unclosed) {
      return true;
    }
  }

  /** Where the quote that is not closed begins. */
  private static int openedAt(String text) {
    int at = Math.max(text.lastIndexOf('"'), text.lastIndexOf('\''));
    while (at > 0 && isOpen(text.substring(0, at))) {
      at = Math.max(text.lastIndexOf('"', at - 1), text.lastIndexOf('\'', at - 1));
    }
    return Math.max(at, 0);
  }

  /** A line with the word under the cursor; text after the cursor is left alone. */
  private record Typed(String line, int cursor, List<String> words, String word, int rawLength)
      implements CompletingParsedLine {

    @Override
    public int wordIndex() {
      return words.size() - 1;
    }

    @Override
    public int wordCursor() {
      return word.length();
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      String text = candidate.toString();
      int equals = text.startsWith("--") ? text.indexOf('=') : -1;
      return equals < 0
          ? Words.quoted(text)
          : text.substring(0, equals + 1) + Words.quoted(text.substring(equals + 1));
    }

    @Override
    public int rawWordCursor() {
      return rawLength;
    }

    @Override
    public int rawWordLength() {
      return rawLength;
    }
  }
}
