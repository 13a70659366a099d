package hosewright.fleet.budget;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * What a budget is asked for.
 *
 * @param from first day of the first year
 * @param years how many years, 1 to 40
 * @param ageLimitYears age at which hose is replaced; empty where the agency set none
 * @param overdueAllowed most sections the level plan may leave overdue at a year's end
 * @param seed of the simulation
 */
public record BudgetRequest(
    LocalDate from,
    int years,
    OptionalInt ageLimitYears,
    Rates rates,
    int overdueAllowed,
    long seed) {

  /** This request with another age limit and prices changed. */
  BudgetRequest whatIf(int ageLimit, BigDecimal change) {
    return new BudgetRequest(
        from,
        years,
        OptionalInt.of(ageLimit),
        new Rates(change, rates.escalation(), rates.discountRate()),
        overdueAllowed,
        seed);
  }

  /**
   * How prices and money change.
   *
   * @param priceChange change of today's prices, a fraction, as a what-if asks
   * @param escalation rise of prices from one year to the next, a fraction
   * @param discountRate rate that brings later money to today's worth, a fraction
   */
  public record Rates(BigDecimal priceChange, BigDecimal escalation, BigDecimal discountRate) {}
}
