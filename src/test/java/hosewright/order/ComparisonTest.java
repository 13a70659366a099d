package hosewright.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.order.Comparison.Landed;
import hosewright.problem.BadInputException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

final class ComparisonTest {
  private static final List<RequestForPrice> ASKED = List.of(new RequestForPrice(1, "adapter", 2));
  private static final Map<CurrencyUnit, BigDecimal> RATES =
      Map.of(CurrencyUnit.CAD, new BigDecimal("0.73"));

  /** 2 x 60.00 + 10.00 = 130.00 USD; 2 x 80.00 + 5.00 = 165.00 CAD x 0.73 = 120.45 USD. */
  private static final List<SupplierAnswer> ANSWERS =
      List.of(answer("COUPL", "USD 60.00", "USD 10.00"), answer("BRASS", "CAD 80.00", "CAD 5.00"));

  @Test
  void the_cheapest_on_our_dock_is_taken_freight_and_currency_counted() {
    List<Landed> landed = compared(Map.of(), Optional.empty(), ANSWERS);

    assertThat(landed)
        .extracting(one -> one.answer().offer().supplier() + " " + one.landed())
        .containsExactly("BRASS USD 120.45", "COUPL USD 130.00");
    assertThat(landed).extracting(one -> one.answer().chosen()).containsExactly(true, false);
  }

  @Test
  void another_is_taken_for_a_reason_only_and_stays_taken() {
    assertThatThrownBy(() -> compared(Map.of(1, "COUPL"), Optional.empty(), ANSWERS))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("say why");

    List<Landed> first = compared(Map.of(1, "COUPL"), Optional.of("sooner"), ANSWERS);
    List<Landed> again =
        compared(Map.of(), Optional.empty(), first.stream().map(Landed::answer).toList());

    assertThat(again.get(1).answer().chosen()).isTrue();
    assertThat(again.get(1).answer().reason()).isEqualTo("sooner");
    assertThat(again.get(0).answer().chosen()).isFalse();
  }

  @Test
  void foreign_money_without_a_rate_and_a_supplier_who_did_not_answer_are_refused() {
    assertThatThrownBy(
            () ->
                Comparison.of(
                    ASKED, ANSWERS, CurrencyUnit.USD, Map.of(), Map.of(), Optional.empty()))
        .hasMessageContaining("‹rate› CAD=");
    assertThatThrownBy(() -> compared(Map.of(1, "WEAVE"), Optional.of("x"), ANSWERS))
        .hasMessageContaining("BRASS, COUPL");
  }

  private static List<Landed> compared(
      Map<Integer, String> overrides, Optional<String> reason, List<SupplierAnswer> answers) {
    return Comparison.of(ASKED, answers, CurrencyUnit.USD, RATES, overrides, reason)
        .lines()
        .get(0)
        .answers();
  }

  private static SupplierAnswer answer(String supplier, String cost, String freight) {
    return new SupplierAnswer(
        "adapter",
        2,
        new SupplierAnswer.Offer(supplier, Money.parse(cost), Money.parse(freight), 14, ""),
        false,
        "");
  }
}
