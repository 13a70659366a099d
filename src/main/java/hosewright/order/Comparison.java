package hosewright.order;

import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Suppliers' answers side by side, in one currency; of each thing asked for, the cheapest landed is
 * chosen, or another for a reason.
 *
 * @param lines what was asked for, each with its answers, cheapest landed first
 */
public record Comparison(List<Line> lines) {

  /** One thing asked for. */
  public record Line(RequestForPrice asked, List<Landed> answers) {}

  /**
   * An answer on the dealer's dock.
   *
   * @param landed all of it with its freight, in the dealer's currency
   */
  public record Landed(SupplierAnswer answer, Money landed) {}

  /**
   * The choice.
   *
   * @param rates how much of the dealer's currency one unit of another is
   * @param answers one chosen before for a reason stays chosen until another is
   * @param overrides supplier by line, where the cheapest is not wanted
   * @param reason why; needed with overrides
   * @throws BadInputException when a rate is missing, an override names nobody who answered, or no
   *     reason is given
   */
  public static Comparison of(
      List<RequestForPrice> asked,
      List<SupplierAnswer> answers,
      CurrencyUnit currency,
      Map<CurrencyUnit, BigDecimal> rates,
      Map<Integer, String> overrides,
      Optional<String> reason) {
    List<Problem> problems = new ArrayList<>();
    answers.stream()
        .filter(answer -> asked.stream().anyMatch(one -> one.wanted().equals(answer.wanted())))
        .map(SupplierAnswer::currency)
        .distinct()
        .filter(foreign -> !foreign.equals(currency) && !rates.containsKey(foreign))
        .forEach(
            foreign ->
                problems.add(
                    Problem.of(
                        "rate",
                        "",
                        "a supplier answered in %1$s: say what one %1$s is in %2$s, as %3$s %1$s=0.73, or put it on record with 'rate set'"
                            .formatted(foreign, currency, Given.as("rate")))));
    if (!overrides.isEmpty() && reason.isEmpty()) {
      problems.add(Problem.of("reason", "", "say why the cheapest landed is not taken"));
    }
    overrides.keySet().stream()
        .filter(line -> asked.stream().noneMatch(one -> one.line() == line))
        .forEach(
            line ->
                problems.add(
                    Problem.of(
                        "choose",
                        line + "",
                        asked.isEmpty()
                            ? "nothing is still to be sourced"
                            : "a line among 1 to " + asked.size())));
    throwAny(problems);
    List<Line> lines =
        asked.stream()
            .map(one -> line(one, answers, currency, rates, overrides, reason, problems))
            .toList();
    throwAny(problems);
    return new Comparison(lines);
  }

  /** Every answer, marked taken or left. */
  public List<SupplierAnswer> answers() {
    return lines.stream().flatMap(line -> line.answers().stream()).map(Landed::answer).toList();
  }

  private static Line line(
      RequestForPrice asked,
      List<SupplierAnswer> answers,
      CurrencyUnit currency,
      Map<CurrencyUnit, BigDecimal> rates,
      Map<Integer, String> overrides,
      Optional<String> reason,
      List<Problem> problems) {
    List<Landed> landed =
        answers.stream()
            .filter(answer -> answer.wanted().equals(asked.wanted()))
            .map(answer -> new Landed(answer, landed(answer, currency, rates)))
            .sorted(
                Comparator.comparing(Landed::landed)
                    .thenComparing(one -> one.answer().offer().leadDays())
                    .thenComparing(one -> one.answer().offer().supplier()))
            .toList();
    Optional<SupplierAnswer> before =
        landed.stream()
            .map(Landed::answer)
            .filter(answer -> answer.chosen() && !answer.reason().isEmpty())
            .findFirst();
    Optional<String> typed = Optional.ofNullable(overrides.get(asked.line()));
    Optional<String> wanted = typed.or(() -> before.map(answer -> answer.offer().supplier()));
    Optional<String> why = typed.isPresent() ? reason : before.map(SupplierAnswer::reason);
    Optional<String> chosen =
        wanted.or(() -> landed.stream().findFirst().map(one -> one.answer().offer().supplier()));
    if (wanted.isPresent()
        && landed.stream().noneMatch(one -> one.answer().offer().supplier().equals(wanted.get()))) {
      problems.add(
          Problem.of(
              "choose",
              asked.line() + "=" + wanted.get(),
              "a supplier who answered line "
                  + asked.line()
                  + ": "
                  + String.join(
                      ", ", landed.stream().map(one -> one.answer().offer().supplier()).toList())));
    }
    return new Line(
        asked,
        landed.stream()
            .map(
                one ->
                    new Landed(
                        one.answer()
                            .chosen(
                                Optional.of(one.answer().offer().supplier()).equals(chosen), why),
                        one.landed()))
            .toList());
  }

  private static Money landed(
      SupplierAnswer answer, CurrencyUnit currency, Map<CurrencyUnit, BigDecimal> rates) {
    return answer.currency().equals(currency)
        ? answer.landed()
        : answer.landed().convertedTo(currency, rates.get(answer.currency()), RoundingMode.HALF_UP);
  }

  private static void throwAny(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
