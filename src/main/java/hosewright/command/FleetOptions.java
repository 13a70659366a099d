package hosewright.command;

import hosewright.desk.Books;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.shell.Invocation;
import hosewright.store.FleetStore;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads what the fleet's commands take. */
final class FleetOptions {
  private static final int OFFERED = 200;

  private FleetOptions() {}

  /** Ids of sections on record that begin so. */
  static List<String> sections(Supplier<Books> books, String typed) {
    try (Books open = books.get()) {
      return open.fleet().idsBeginning(typed, OFFERED);
    }
  }

  /** A whole number within limits; empty when the option was not typed and has no default. */
  static OptionalInt wholeNumber(Invocation in, String option, int least, int most) {
    Optional<String> text = in.value(option);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    boolean digits = text.get().matches("\\d{1,9}");
    if (!digits || Integer.parseInt(text.get()) < least || Integer.parseInt(text.get()) > most) {
      throw new BadInputException(
          option, text.get(), "a whole number from %d to %d".formatted(least, most));
    }
    return OptionalInt.of(Integer.parseInt(text.get()));
  }

  /** A day; the default when the option was not typed. */
  static LocalDate day(Invocation in, String option, LocalDate otherwise) {
    return in.value(option).map(text -> day(option, text)).orElse(otherwise);
  }

  static LocalDate day(String option, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadInputException(
          option, text, "a day of the calendar written year-month-day, such as 2026-01-31");
    }
  }

  /** A share of 0 to 100 %, as a fraction. */
  static BigDecimal share(Invocation in, String option) {
    return fraction(in.value(option).orElse("0%"), option);
  }

  /** A rise or a fall, such as +8% or -5%, as a fraction. */
  static BigDecimal change(Invocation in, String option) {
    String text = in.value(option).orElse("0%");
    boolean falls = text.startsWith("-");
    BigDecimal size = fraction(text.replaceFirst("^[+-]", ""), option);
    if (falls && size.compareTo(BigDecimal.ONE) >= 0) {
      throw new BadInputException(option, text, "a fall of less than 100 %");
    }
    return falls ? size.negate() : size;
  }

  private static BigDecimal fraction(String text, String option) {
    return BigDecimal.valueOf(Measures.percent(option, text));
  }

  /** The fleet on the books, which must have hose. */
  static FleetStore loaded(Books books) {
    FleetStore fleet = books.fleet();
    if (fleet.isEmpty()) {
      throw new BadInputException(
          List.of(
              new Problem(
                  "fleet",
                  "",
                  "no hose is on record yet; load an inventory first",
                  "fleet load catalogue/fleet")));
    }
    return fleet;
  }
}
