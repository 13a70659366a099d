package hosewright.desk.fleet;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Reads days, counts and shares as the fleet's deeds are told them. */
public final class FleetWords {
  private FleetWords() {}

  /**
   * A day of the calendar.
   *
   * @param field what the user calls it
   * @throws BadInputException when it is none
   */
  public static LocalDate day(String field, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadInputException(
          field, text, "a day of the calendar written year-month-day, such as 2026-01-31");
    }
  }

  /** A whole number within limits. */
  static int wholeNumber(String field, String text, int least, int most) {
    boolean digits = text.matches("\\d{1,9}");
    if (!digits || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
      throw new BadInputException(
          field, text, "a whole number from %d to %d".formatted(least, most));
    }
    return Integer.parseInt(text);
  }

  /** A share of 0 to 100 %, as a fraction. */
  static BigDecimal share(String field, String text) {
    return BigDecimal.valueOf(Measures.percent(field, text));
  }

  /** A rise or a fall, such as +8% or -5%, as a fraction. */
  static BigDecimal change(String field, String text) {
    boolean falls = text.startsWith("-");
    BigDecimal size = share(field, text.replaceFirst("^[+-]", ""));
    if (falls && size.compareTo(BigDecimal.ONE) >= 0) {
      throw new BadInputException(field, text, "a fall of less than 100 %");
    }
    return falls ? size.negate() : size;
  }
}
