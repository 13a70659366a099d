package hosewright.csv;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/**
 * One row of a CSV file.
 *
 * <p>A cell that cannot be read is noted as a problem and answered by a stand-in, so that one pass
 * over a file finds everything wrong with it; the caller leaves out rows that are not {@link
 * #sound}.
 */
public final class CsvRow {
  /** Marks of a failed formula, and a formula that was saved without its result. */
  private static final Pattern UNCALCULATED =
      Pattern.compile("=.*|#(N/A|REF!|VALUE!|NAME\\?|DIV/0!|NULL!|NUM!)", Pattern.DOTALL);

  /** A file made for another catalogue has no right name anywhere: stop looking after so many. */
  private static final int SUGGESTIONS = 50;

  private static final int MOST_DECIMALS = 6;

  private static final CurrencyUnit STAND_IN = CurrencyUnit.USD;

  private final Heading heading;
  private CellRows.Row row;
  private final List<Problem> problems;
  private boolean sound = true;

  CsvRow(Heading heading, CellRows.Row row, List<Problem> problems) {
    this.heading = heading;
    this.row = row;
    this.problems = problems;
  }

  /**
   * What the rows of a table share.
   *
   * @param title what the user knows the table by
   * @param columnTitle what the user knows a column by
   * @param places where each column stands in a row
   */
  record Heading(String title, UnaryOperator<String> columnTitle, Map<String, Integer> places) {}

  /**
   * Refuses every cell that has a character in it which may not be kept; the row is read on without
   * those, so that whatever else is wrong with it is found too.
   */
  void requirePlainText() {
    if (row.cells().stream().allMatch(PlainText::is)
        && (row.written() == row.cells() || row.written().stream().allMatch(PlainText::is))) {
      return;
    }
    heading
        .places()
        .forEach(
            (column, place) ->
                PlainText.refusal(where(column), row.written().get(place))
                    .or(() -> PlainText.refusal(where(column), row.cells().get(place)))
                    .ifPresent(
                        problem -> {
                          sound = false;
                          problems.add(problem);
                        }));
    row =
        new CellRows.Row(
            row.line(), row.cells().stream().map(PlainText::without).toList(), row.written());
  }

  /** The line the row begins on, 1 for the first of the file. */
  public long line() {
    return row.line();
  }

  /** True while no cell of the row has been refused. */
  public boolean sound() {
    return sound;
  }

  /** The cell as it stands, without the blanks around it; empty where the header has no such. */
  public String cell(String column) {
    Integer place = heading.places().get(column);
    return place == null ? "" : row.cells().get(place);
  }

  public boolean empty(String column) {
    return cell(column).isEmpty();
  }

  /** Notes that a cell cannot be used. */
  public void refuse(String column, String allowed, String nearest) {
    sound = false;
    problems.add(new Problem(where(column), written(column), allowed, nearest));
  }

  public void refuse(String column, String allowed) {
    refuse(column, allowed, "");
  }

  /** A text that must be there. */
  public String text(String column, int longest) {
    if (empty(column)) {
      refuse(column, "a text of 1 to " + longest + " characters");
    }
    return optionalText(column, longest);
  }

  /** A text, or the empty string. */
  public String optionalText(String column, int longest) {
    String text = cell(column);
    if (text.length() > longest) {
      refuse(column, "at most " + longest + " characters, not " + text.length());
    } else if (UNCALCULATED.matcher(text).matches()) {
      refuse(column, "a value: this is what a spreadsheet leaves where it could not calculate one");
    }
    return text;
  }

  /** The name of something that stands in another file. */
  public String known(String column, Set<String> known, String where) {
    String text = cell(column);
    if (!known.contains(text)) {
      boolean worthLooking = problems.size() < SUGGESTIONS;
      refuse(column, "it must stand in " + where, worthLooking ? Nearest.to(text, known) : "");
    }
    return text;
  }

  /** A text out of a short list; the stand-in is null. */
  public <T> T choice(String column, Map<String, T> allowed) {
    T chosen = allowed.get(cell(column));
    if (chosen == null) {
      refuse(
          column,
          "one of " + String.join(", ", allowed.keySet()),
          Nearest.to(cell(column), allowed.keySet()));
    }
    return chosen;
  }

  /** yes or no; empty is no. */
  public boolean yes(String column) {
    if (!empty(column) && !cell(column).equals("yes") && !cell(column).equals("no")) {
      refuse(column, "yes or no", Nearest.to(cell(column), List.of("yes", "no")));
    }
    return cell(column).equals("yes");
  }

  /** A number that must be there. */
  public double number(String column, Limits limits) {
    return decimal(column, limits).doubleValue();
  }

  public OptionalDouble optionalNumber(String column, Limits limits) {
    return empty(column) ? OptionalDouble.empty() : OptionalDouble.of(number(column, limits));
  }

  /** A number kept exactly, in its shortest form. */
  public BigDecimal decimal(String column, Limits limits) {
    return decimal(column, limits, MOST_DECIMALS);
  }

  private BigDecimal decimal(String column, Limits limits, int mostDecimals) {
    Optional<BigDecimal> number = limits.read(cell(column));
    if (number.isEmpty()) {
      refuse(column, limits.words(), limits.bareNumber(cell(column), mostDecimals));
    }
    return number.orElse(BigDecimal.ONE);
  }

  /** A whole number that must be there. */
  public int wholeNumber(String column, Limits limits) {
    BigDecimal number = decimal(column, limits, 0);
    if (number.scale() > 0) {
      refuse(column, "a whole number");
    }
    return number.intValue();
  }

  /** A whole number; an empty cell stands for {@code ifEmpty}. */
  public int wholeNumber(String column, Limits limits, int ifEmpty) {
    return empty(column) ? ifEmpty : wholeNumber(column, limits);
  }

  /** A date that must be there. */
  public LocalDate date(String column) {
    try {
      return LocalDate.parse(cell(column));
    } catch (DateTimeParseException e) {
      refuse(column, "a date of the calendar written year-month-day, such as 2026-01-31");
      return LocalDate.EPOCH;
    }
  }

  public Optional<LocalDate> optionalDate(String column) {
    return empty(column) ? Optional.empty() : Optional.of(date(column));
  }

  /** The last day of a period, on or after its first; empty while the period is open. */
  public Optional<LocalDate> until(String column, LocalDate from) {
    Optional<LocalDate> until = optionalDate(column);
    if (sound && until.isPresent() && until.get().isBefore(from)) {
      refuse(column, "a day not before " + from);
    }
    return until;
  }

  /** An amount of money: never negative, never rounded. */
  public Money money(String amountColumn, String currencyColumn) {
    CurrencyUnit currency = currency(currencyColumn);
    int places = currency.getDecimalPlaces();
    String allowed = "0 or more " + currency + " with at most " + places + " decimals";
    BigDecimal amount = decimal(amountColumn, new Limits(0, 999_999_999, allowed), places);
    if (amount.scale() > places) {
      refuse(amountColumn, allowed);
      return Money.zero(currency);
    }
    return Money.of(currency, amount);
  }

  /** What {@code parser} makes of a cell; what it refuses is noted against the cell. */
  public <T> Optional<T> parsed(String column, String part, Function<String, T> parser) {
    try {
      return Optional.of(parser.apply(part));
    } catch (BadInputException e) {
      e.problems().forEach(problem -> refusePart(column, part, problem));
      return Optional.empty();
    }
  }

  /** The parts of a cell between separators, without the blanks around them. */
  public List<String> parts(String column, String separator) {
    return empty(column)
        ? List.of()
        : Arrays.stream(cell(column).split(separator, -1)).map(String::strip).toList();
  }

  private void refusePart(String column, String part, Problem problem) {
    sound = false;
    problems.add(new Problem(where(column), part, problem.allowed(), problem.nearest()));
  }

  private String where(String column) {
    return heading.title() + " line " + line() + " column " + heading.columnTitle().apply(column);
  }

  /** The cell as it stands in the file. */
  private String written(String column) {
    Integer place = heading.places().get(column);
    return place == null ? "" : row.written().get(place);
  }

  private CurrencyUnit currency(String column) {
    try {
      return CurrencyUnit.of(cell(column));
    } catch (IllegalCurrencyException e) {
      String upper = cell(column).toUpperCase(Locale.ROOT);
      refuse(
          column,
          "a currency code of ISO 4217, such as USD",
          CurrencyUnit.registeredCurrencies().stream()
              .map(CurrencyUnit::getCode)
              .filter(upper::equals)
              .findFirst()
              .orElse(""));
      return STAND_IN;
    }
  }
}
