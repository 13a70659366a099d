package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

final class PresentValueTest {
  private static final CurrencyUnit USD = CurrencyUnit.USD;

  private static List<Money> gradient(Money first, String rise, int years) {
    List<Money> amounts = new ArrayList<>();
    for (int year = 1; year <= years; year++) {
      amounts.add(PresentValue.escalated(first, new BigDecimal(rise), year));
    }
    return amounts;
  }

  /**
   * Maintenance of 1,700 in year 1 rising 11 % a year for 6 years at 8 %: 1,700 times 5.9559.
   * Source: Blank and Tarquin, Engineering Economy, 6th ed., example 2.11, whose whole answer, with
   * 8,000 now and 1,300 of salvage, is 17,305.85 with factors rounded to four decimals, worth 0.05
   * here.
   */
  @Test
  void the_textbook_gradient_has_the_textbook_present_worth() {
    Money maintenance = PresentValue.of(gradient(Money.of(USD, 1_700), "0.11", 6), rate("0.08"));
    assertThat(maintenance.getAmount().divide(new BigDecimal("1700"), 4, RoundingMode.HALF_UP))
        .isEqualByComparingTo("5.9559");
    List<Money> salvage = new ArrayList<>(gradient(Money.zero(USD), "0", 5));
    salvage.add(Money.of(USD, 1_300));
    Money whole =
        Money.of(USD, 8_000).minus(PresentValue.of(salvage, rate("0.08"))).plus(maintenance);
    assertThat(whole.minus(Money.of(USD, new BigDecimal("17305.85"))).abs())
        .isLessThanOrEqualTo(Money.of(USD, new BigDecimal("0.05")));
  }

  /**
   * 1,000 in year 1 rising 7 % a year for 10 years at 12 % is worth 7,333. Source: course notes on
   * the engineering economics of the Fundamentals of Engineering examination, geometric gradients.
   */
  @Test
  void a_second_published_gradient_agrees_to_the_dollar() {
    Money worth = PresentValue.of(gradient(Money.of(USD, 1_000), "0.07", 10), rate("0.12"));
    assertThat(worth.getAmount().setScale(0, RoundingMode.HALF_UP)).isEqualByComparingTo("7333");
  }

  @Test
  void at_no_rate_today_s_worth_is_the_sum() {
    List<Money> amounts = List.of(Money.of(USD, 10), Money.of(USD, 20));
    assertThat(PresentValue.of(amounts, BigDecimal.ZERO)).isEqualTo(Money.of(USD, 30));
  }

  private static BigDecimal rate(String rate) {
    return new BigDecimal(rate);
  }
}
