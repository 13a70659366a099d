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
    String mark = open ? upToCursor.substring(openedAt(upToCursor)).substring(0, 1) : "";
    return new Typed(line, cursor, List.copyOf(words), word, mark);
  }

  private static List<String> wordsOf(String text) {
    try {
      return Words.of(text);
    } catch (BadInputException unclosed) {
      int open = openedAt(text);
      List<String> words = new ArrayList<>(Words.of(text.substring(0, open)));
      boolean value = open > 0 && text.charAt(open - 1) == '=';
      String head = value ? words.remove(words.size() - 1) : "";
      words.add(head + text.substring(open + 1));
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

  /**
   * A line with the word under the cursor; text after the cursor is left alone.
   *
   * @param mark the quote that the word under the cursor was opened with; empty where it was not
   */
  private record Typed(String line, int cursor, List<String> words, String word, String mark)
      implements CompletingParsedLine {

    @Override
    public int wordIndex() {
      return words.size() - 1;
    }

    @Override
    public int wordCursor() {
      return word.length();
    }

    /** As it must be typed: the line editor also takes away what is typed by this length. */
    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      String text = candidate.toString();
      int equals = text.startsWith("--") ? text.indexOf('=') : -1;
      String head = text.substring(0, equals + 1);
      String value = text.substring(equals + 1);
      return head + (mark.isEmpty() ? plain(value, complete) : marked(mark, value, complete));
    }

    /** Nothing typed yet is no word to put quotes around. */
    private static String plain(String value, boolean complete) {
      String quoted = Words.quoted(value);
      return value.isEmpty() || quoted.equals(value)
          ? value
          : marked(quoted.substring(0, 1), value, complete);
    }

    private static String marked(String mark, String value, boolean complete) {
      return mark + value + (complete ? mark : "");
    }

    @Override
    public int rawWordCursor() {
      return word.length() + mark.length();
    }

    @Override
    public int rawWordLength() {
      return word.length() + mark.length();
    }
  }
}
