package hosewright.door.shell.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How wide the columns of a table are, so that no number and no word is broken. */
final class ColumnWidths {
  /** On a screen that is not wide, text in fewer columns than this is no longer read with ease. */
  private static final int READABLE_NARROW = 24;

  private static final int READABLE = 12;
  private static final int USUAL_SCREEN = 72;

  /** Longer words, such as names of files, may be broken. */
  private static final int LONGEST_WORD = 32;

  private final String[] headings;
  private final List<String[]> rows;
  private final Set<Integer> numbers;

  ColumnWidths(String[] headings, List<String[]> rows, Set<Integer> numbers) {
    this.headings = headings;
    this.rows = rows;
    this.numbers = numbers;
  }

  /** The width of each column, one blank between them; empty where they do not fit. */
  int[] on(int screenWidth) {
    int[] natural = new int[headings.length];
    int[] widths = new int[headings.length];
    int readable = screenWidth < USUAL_SCREEN ? READABLE_NARROW : READABLE;
    for (int column = 0; column < headings.length; column++) {
      natural[column] = longest(cells(column));
      widths[column] =
          numbers.contains(column)
              ? natural[column]
              : Math.min(natural[column], Math.max(readable, longestWord(column)));
    }
    int room = screenWidth - (headings.length - 1) - Arrays.stream(widths).sum();
    if (room < 0) {
      return new int[0];
    }
    while (room > 0 && widen(widths, natural)) {
      room--;
    }
    return widths;
  }

  /** Gives one more to the column whose text runs on longest; false where all have enough. */
  private static boolean widen(int[] widths, int[] natural) {
    int neediest =
        IntStream.range(0, widths.length)
            .filter(column -> widths[column] < natural[column])
            .boxed()
            .max(
                (one, other) ->
                    Double.compare(
                        (double) natural[one] / widths[one],
                        (double) natural[other] / widths[other]))
            .orElse(-1);
    if (neediest >= 0) {
      widths[neediest]++;
    }
    return neediest >= 0;
  }

  private int longestWord(int column) {
    int longest = longest(cells(column).flatMap(cell -> Arrays.stream(cell.split(" "))));
    return Math.min(LONGEST_WORD, longest);
  }

  private Stream<String> cells(int column) {
    return Stream.concat(Stream.of(headings[column]), rows.stream().map(row -> row[column]));
  }

  private static int longest(Stream<String> texts) {
    return Math.max(1, texts.mapToInt(String::length).max().orElse(1));
  }
}
