package hosewright.desk.data;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.store.database.HighWaterMarks;
import hosewright.store.database.Series;
import java.util.Arrays;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Sets right what this machine remembers as the highest number ever given to a paper. */
public final class SetMark {
  private final Supplier<Books> books;

  public SetMark(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * A mark that was set right.
   *
   * @param before as it stood in the file
   * @param next the number that is given next
   */
  public record Marked(String file, String before, int number, String next, String log) {}

  /**
   * Sets it.
   *
   * @param paper quote, order or purchase order
   * @throws BadInputException when there are no such papers, the number is below the last one in
   *     the books or far beyond it, or no reason is given
   */
  public Marked mark(String paper, String number, String reason, String by) {
    Series series =
        Series.named(paper).orElseThrow(() -> new BadInputException("PAPER", paper, papers()));
    if (!number.matches("\\d{1,9}")) {
      throw new BadInputException("NUMBER", number, "a number in digits");
    }
    String who = Signing.name(by);
    String why = Signing.sentence("reason", reason);
    try (Books open = books.get()) {
      HighWaterMarks.Corrected done = open.setMark(series, Integer.parseInt(number), who, why);
      return new Marked(
          done.file().toString(),
          done.before(),
          done.number(),
          series.written(done.number() + 1),
          done.log().toString());
    }
  }

  private static String papers() {
    return Arrays.stream(Series.values()).map(Series::paper).collect(Collectors.joining(", "));
  }
}
