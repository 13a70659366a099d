package hosewright.desk.fleet;

import hosewright.desk.Refusals;
import hosewright.fleet.budget.BudgetRequest;
import hosewright.fleet.record.AgencyLimits;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;

/** Reads what a budget is asked for. */
final class BudgetForm {
  private static final int MOST_YEARS = 40;
  private static final int OLDEST_YEARS = 60;
  private static final int MOST_OVERDUE = 1_000_000;
  private static final int LAST_SEED = 999_999_999;

  private final Map<BudgetField, String> said;
  private final Refusals refusals = new Refusals();

  private BudgetForm(Map<BudgetField, String> said) {
    this.said = said;
  }

  /**
   * The request.
   *
   * @param limits the agency's own, where nothing else is said
   * @throws hosewright.problem.BadInputException naming everything that cannot be used
   */
  static BudgetRequest read(Map<BudgetField, String> said, AgencyLimits limits, LocalDate today) {
    BudgetForm form = new BudgetForm(said);
    Optional<Integer> years = form.number(BudgetField.YEARS, 1, MOST_YEARS);
    Optional<LocalDate> from = form.read(BudgetField.FROM, FleetWords::day);
    Optional<Integer> limit = form.number(BudgetField.AGE_LIMIT, 1, OLDEST_YEARS);
    Optional<BigDecimal> change = form.read(BudgetField.PRICES, FleetWords::change);
    Optional<BigDecimal> escalation = form.read(BudgetField.ESCALATION, FleetWords::change);
    Optional<BigDecimal> rate = form.read(BudgetField.DISCOUNT_RATE, FleetWords::share);
    Optional<Integer> overdue = form.number(BudgetField.OVERDUE, 0, MOST_OVERDUE);
    Optional<Integer> seed = form.number(BudgetField.SEED, 0, LAST_SEED);
    form.refusals.throwAny();
    return new BudgetRequest(
        from.orElse(today),
        years.orElseThrow(),
        limit.map(OptionalInt::of).orElseGet(limits::ageYears),
        new BudgetRequest.Rates(change.orElseThrow(), escalation.orElseThrow(), rate.orElseThrow()),
        overdue.orElseThrow(),
        seed.orElseThrow());
  }

  private Optional<Integer> number(BudgetField field, int least, int most) {
    return read(field, (name, text) -> FleetWords.wholeNumber(name, text, least, most));
  }

  /** What a field says; empty where it says nothing and nothing is its standard, or is refused. */
  private <T> Optional<T> read(BudgetField field, BiFunction<String, String, T> reader) {
    return Optional.ofNullable(said.get(field))
        .or(() -> Optional.of(field.standard()).filter(standard -> !standard.isEmpty()))
        .flatMap(text -> refusals.read(() -> reader.apply(field.word(), text)));
  }
}
