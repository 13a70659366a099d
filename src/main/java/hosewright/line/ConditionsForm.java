package hosewright.line;

import static hosewright.line.JobField.*;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads the terms a buyer sets: budget, stock, day, spares, weight and what is there already. */
final class ConditionsForm {
  /** More spare sections than this is a slip of the finger. */
  private static final int MOST_SPARES = 100;

  private static final Pattern SUM =
      Pattern.compile(
          "([A-Z]{3})?\\s*(\\d{1,3}(?:,\\d{3})+|\\d{1,9})(\\.\\d{1,2})?\\s*([A-Z]{3})?");

  private final Function<JobField, Optional<String>> answers;
  private final List<Problem> problems;

  ConditionsForm(Function<JobField, Optional<String>> answers, List<Problem> problems) {
    this.answers = answers;
    this.problems = problems;
  }

  Conditions conditions() {
    Optional<LocalDate> deliverBy = read(DELIVER_BY, JobForm::date);
    return new Conditions(
        read(BUDGET, ConditionsForm::money),
        read(STOCK_ONLY, ConditionsForm::yes).orElse(false),
        deliverBy,
        read(SPARE_SECTIONS, ConditionsForm::spares).orElse(0),
        read(SECTION_WEIGHT, Measures::weightLb)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()),
        read(OWNED, (field, text) -> new OwnedHoseForm(field).read(text)).orElse(List.of()));
  }

  private <T> Optional<T> read(JobField field, BiFunction<String, String, T> reader) {
    try {
      return answers.apply(field).map(text -> reader.apply(field.word(), text));
    } catch (BadInputException e) {
      e.problems()
          .forEach(
              problem ->
                  problems.add(
                      new Problem(
                          field.word(), problem.value(), problem.allowed(), problem.nearest())));
      return Optional.empty();
    }
  }

  private static Money money(String field, String text) {
    Matcher sum = SUM.matcher(text.toUpperCase(Locale.ROOT));
    if (sum.matches() && (sum.group(1) == null) != (sum.group(4) == null)) {
      String code = sum.group(1) == null ? sum.group(4) : sum.group(1);
      String cents = sum.group(3) == null ? "" : sum.group(3);
      try {
        return Money.parse(CurrencyUnit.of(code) + " " + sum.group(2).replace(",", "") + cents);
      } catch (IllegalArgumentException | ArithmeticException e) {
        throw JobForm.refusal(field, text, "a sum with its currency's code", BUDGET.example());
      }
    }
    throw JobForm.refusal(field, text, "a sum with its currency's code", BUDGET.example());
  }

  private static boolean yes(String field, String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw JobForm.refusal(field, text, "yes or no", "yes");
    };
  }

  private static int spares(String field, String text) {
    if (text.matches("\\d{1,3}") && Integer.parseInt(text) <= MOST_SPARES) {
      return Integer.parseInt(text);
    }
    throw JobForm.refusal(field, text, "a whole number from 0 to " + MOST_SPARES, "");
  }
}
