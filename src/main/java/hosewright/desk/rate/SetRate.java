package hosewright.desk.rate;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.quote.terms.Rates.ExchangeRate;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Puts on record what one unit of another currency is worth from a day on. */
public final class SetRate {
  private static final int LONGEST_SOURCE = 200;

  private final Supplier<Books> books;

  public SetRate(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked, as somebody wrote it.
   *
   * @param into the currency of the list prices without it
   * @param from first day in force; today without it
   * @param source where the figure is from
   * @param by who says so
   */
  public record Request(
      String currency,
      String rate,
      Optional<String> into,
      Optional<String> from,
      String source,
      String by) {}

  /**
   * The rate as it stands on record now.
   *
   * @throws BadInputException naming everything that cannot be used; nothing is kept then
   */
  public ExchangeRate set(Request asked) {
    try (Books open = books.get()) {
      Refusals refusals = new Refusals();
      Optional<CurrencyUnit> currency = refusals.read(() -> currency("currency", asked.currency()));
      Optional<CurrencyUnit> into =
          refusals.read(
              () ->
                  asked
                      .into()
                      .map(code -> currency("into", code))
                      .orElseGet(() -> open.catalogue().currencyNeeded()));
      Optional<BigDecimal> rate = refusals.read(() -> rate(asked.rate()));
      Optional<LocalDate> from =
          refusals.read(() -> asked.from().map(SetRate::day).orElseGet(open::today));
      Optional<String> source =
          refusals.read(() -> Signing.text("source", asked.source(), LONGEST_SOURCE));
      String by = Signing.name(asked.by());
      refusals.throwAny();
      if (currency.equals(into)) {
        throw new BadInputException(
            "currency", asked.currency(), "another than " + into.orElseThrow());
      }
      ExchangeRate set =
          new ExchangeRate(
              currency.orElseThrow(),
              into.orElseThrow(),
              from.orElseThrow(),
              rate.orElseThrow(),
              source.orElseThrow());
      open.rates().put(set, by, open.now());
      return set;
    }
  }

  private static CurrencyUnit currency(String field, String typed) {
    try {
      return CurrencyUnit.of(typed.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalCurrencyException e) {
      throw new BadInputException(field, typed, "a currency code of ISO 4217, such as CAD");
    }
  }

  private static BigDecimal rate(String typed) {
    String text = typed.strip();
    if (text.matches("\\d{1,6}(\\.\\d{1,8})?") && new BigDecimal(text).signum() > 0) {
      return new BigDecimal(text);
    }
    throw new BadInputException(
        "rate", typed, "a number over 0 with at most 8 decimals, such as 0.73");
  }

  private static LocalDate day(String typed) {
    try {
      return LocalDate.parse(typed.strip());
    } catch (DateTimeParseException e) {
      throw new BadInputException("from", typed, "a day, written year-month-day");
    }
  }
}
