package hosewright.job.question;

import hosewright.csv.WrittenNumber;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.PumpCurve;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads answers that are no plain measures. Each takes the field's name and the text, and refuses
 * with what is allowed.
 */
final class AnswerReading {
  private static final Pattern SUM =
      Pattern.compile(
          "([A-Z]{3})?\\s*([1-9]\\d{0,2}(?:,\\d{3})+|\\d{1,9})(\\.\\d{1,2})?\\s*([A-Z]{3})?");

  private static final Pattern WRITTEN_SUM =
      Pattern.compile("([A-Z]{3}\\s*|)(\\d(?:.*\\d)?)(\\s*[A-Z]{3}|)");

  private AnswerReading() {}

  static String text(String field, String text) {
    return text;
  }

  /** One of a few words, in lower case. */
  static String oneOf(String field, String text, List<String> words) {
    String word = text.toLowerCase(Locale.ROOT);
    if (words.contains(word)) {
      return word;
    }
    int last = words.size() - 1;
    String allowed =
        "it is " + String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    throw refusal(field, text, allowed, Nearest.to(text, words));
  }

  /**
   * What the water is for, or what flows: how warm it is has a question of its own.
   *
   * @param reader of anything that does not speak of its warmth
   */
  static <T> BiFunction<String, String, T> notWarmth(BiFunction<String, String, T> reader) {
    return (field, text) -> {
      if (text.toLowerCase(Locale.ROOT).matches("(hot|warm)\\b.*|.*\\b(hot|warm) water")) {
        throw refusal(
            field,
            text,
            "'water', and how warm it is as temperature, such as temperature 150 F",
            "water");
      }
      return reader.apply(field, text);
    };
  }

  /** A whole number within bounds. */
  static BiFunction<String, String, Integer> whole(int least, int most) {
    return (field, text) -> {
      if (text.matches("\\d{1,4}")) {
        int number = Integer.parseInt(text);
        if (number >= least && number <= most) {
          return number;
        }
      }
      throw refusal(field, text, "a whole number from " + least + " to " + most, "");
    };
  }

  static boolean yes(String field, String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw refusal(field, text, "yes or no", "yes");
    };
  }

  static String family(String field, String text) {
    return Families.find(text)
        .map(Family::code)
        .orElseThrow(
            () -> {
              List<String> codes = Families.all().stream().map(Family::code).toList();
              return refusal(
                  field,
                  text,
                  "it is a family such as " + String.join(", ", codes),
                  Nearest.to(text, codes));
            });
  }

  static List<Double> sizes(String field, String text) {
    return Arrays.stream(text.split("[,;]|\\bor\\b"))
        .map(size -> Measures.sizeIn(field, size.strip()))
        .distinct()
        .sorted()
        .toList();
  }

  static double tip(String field, String text) {
    double tipIn = Measures.sizeIn(field, text);
    if (tipIn > Demand.SmoothBore.LARGEST_TIP_IN) {
      throw refusal(field, text, "over 0 up to 6 in", "");
    }
    return tipIn;
  }

  static double coefficient(String field, String text) {
    if (isCoefficient(text)) {
      return Double.parseDouble(text);
    }
    String meant = WrittenNumber.plain(text.strip());
    boolean figures = text.chars().anyMatch(Character::isDigit);
    throw refusal(
        field,
        text,
        "a plain number over 0 up to 5000, psi per 100 ft at 100 gpm",
        isCoefficient(meant) ? meant : figures ? "" : "15.5");
  }

  private static boolean isCoefficient(String text) {
    try {
      double c = Double.parseDouble(text);
      return c > 0 && c <= 5000;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  static LocalDate date(String field, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw refusal(field, text, "a day of the calendar as YYYY-MM-DD", "");
    }
  }

  static Money money(String field, String text) {
    return sum(text).orElseThrow(() -> noSum(field, text));
  }

  private static BadInputException noSum(String field, String text) {
    // A sum written with a decimal comma; anything else with figures in it would be guessed at.
    Matcher written = WRITTEN_SUM.matcher(text.strip().toUpperCase(Locale.ROOT));
    String meant =
        written.matches()
            ? written.group(1) + WrittenNumber.plain(written.group(2)) + written.group(3)
            : "";
    boolean figures = text.chars().anyMatch(Character::isDigit);
    String nearest = sum(meant).isPresent() ? meant : figures ? "" : JobField.BUDGET.example();
    return refusal(field, text, "a sum with its currency's code", nearest);
  }

  private static Optional<Money> sum(String text) {
    Matcher sum = SUM.matcher(text.toUpperCase(Locale.ROOT));
    if (sum.matches() && (sum.group(1) == null) != (sum.group(4) == null)) {
      String code = sum.group(1) == null ? sum.group(4) : sum.group(1);
      String cents = sum.group(3) == null ? "" : sum.group(3);
      try {
        return Optional.of(
            Money.parse(CurrencyUnit.of(code) + " " + sum.group(2).replace(",", "") + cents));
      } catch (IllegalArgumentException | ArithmeticException e) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  static List<PumpCurve.Point> pumpPoints(String field, String text) {
    return Arrays.stream(text.split(";")).map(point -> pumpPoint(field, point.strip())).toList();
  }

  private static PumpCurve.Point pumpPoint(String field, String point) {
    String[] sides = point.split("\\bat\\b");
    if (sides.length != 2) {
      throw refusal(
          field,
          point,
          "points such as '180 psi at 0 gpm', separated by semicolons",
          JobField.PUMP_CURVE.example());
    }
    double flowGpm = Measures.flowOrNoneGpm(field, sides[1].strip());
    return new PumpCurve.Point(flowGpm, Measures.lossPsi(field, sides[0].strip()));
  }

  static List<String> accessories(String field, String text) {
    return Arrays.stream(text.split("[,;]"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .map(
            asked ->
                Asked.read(asked)
                    .orElseThrow(
                        () ->
                            refusal(
                                field,
                                asked,
                                "a device stands 'at source', as it does unasked, 'at appliance',"
                                    + " or at a station such as 'at 150 ft'",
                                "")))
        .toList();
  }

  /** Rules of the trade that may be lifted, by their names. */
  static List<Practice> liftable(String field, String text) {
    return Arrays.stream(text.split("[,;]"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .map(s -> liftableOne(field, s))
        .distinct()
        .toList();
  }

  private static Practice liftableOne(String field, String text) {
    String id = text.toLowerCase(Locale.ROOT);
    Optional<Practice> rule = Practice.find(id);
    if (rule.filter(Practice::liftable).isPresent()) {
      return rule.get();
    }
    List<String> ids = Practice.liftableIds();
    boolean known = rule.isPresent();
    throw refusal(
        field,
        text,
        (known ? "that rule is never lifted; those that are: " : "a rule that may be lifted: ")
            + String.join(", ", ids),
        known ? "" : Nearest.to(text, ids));
  }

  static BadInputException refusal(String field, String value, String allowed, String nearest) {
    return new BadInputException(List.of(new Problem(field, value, allowed, nearest)));
  }
}
