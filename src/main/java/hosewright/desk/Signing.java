package hosewright.desk;

import hosewright.order.OrderBook;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.Signed;
import java.time.Instant;
import java.util.regex.Pattern;

/** Who takes a step and why, in words that fit the books. */
public final class Signing {
  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_NOTE = 1000;
  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

  private Signing() {}

  /**
   * A step with its signature.
   *
   * @param by the name given
   */
  public static Signed as(String by, Step step, Instant at, String note) {
    return Signed.of(step, name(by), at, note);
  }

  /** Who moves goods, and when. */
  public static OrderBook.Actor actor(String by, Instant at) {
    return new OrderBook.Actor(name(by), at);
  }

  /** The name of whoever takes a step. */
  public static String name(String given) {
    return text("by", given, LONGEST_NAME);
  }

  /**
   * A sentence for the record.
   *
   * @param field what the user calls it
   */
  public static String sentence(String field, String given) {
    return text(field, given, LONGEST_NOTE);
  }

  /**
   * A text on one line.
   *
   * @throws BadInputException when it is empty or too long, or breaks the line
   */
  public static String text(String field, String given, int longest) {
    String text = given.strip();
    if (text.isEmpty() || text.length() > longest || CONTROL.matcher(text).find()) {
      throw new BadInputException(
          field, text, "a text of 1 to " + longest + " characters on one line");
    }
    // The name a person is logged in under comes through no door.
    return PlainText.require(field, text);
  }
}
