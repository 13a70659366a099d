package hosewright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.problem.BadInputException;
import java.util.Arrays;
import java.util.Currency;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Codes and digits that others agree on. */
final class OutsideCodesTest {

  @Test
  void units_carry_the_common_codes_of_the_list_that_trade_documents_use() {
    // UN/ECE Recommendation 20, revision 14 (2020), Annex III: EA each, FOT foot, PR pair, SET set.
    assertThat(
            Arrays.stream(UnitOfSale.values())
                .collect(Collectors.toMap(UnitOfSale::word, UnitOfSale::code)))
        .isEqualTo(Map.of("each", "EA", "foot", "FOT", "pair", "PR", "set", "SET"));
  }

  @Test
  void a_price_has_as_many_decimals_as_its_currency_and_no_more() {
    // ISO 4217 by two tables of it, Joda-Money's and Java's own: JPY 0, USD 2, KWD 3.
    for (String code : new String[] {"JPY", "USD", "EUR", "CAD", "KWD"}) {
      int digits = CurrencyUnit.of(code).getDecimalPlaces();
      assertThat(digits).isEqualTo(Currency.getInstance(code).getDefaultFractionDigits());

      String whole = "3" + (digits == 0 ? "" : "." + "1".repeat(digits));
      assertThat(priced(whole, code).listPrice("B15", 1, CatalogueFiles.DAY))
          .contains(Money.parse(code + " " + whole));
      BadInputException refused =
          catchThrowableOfType(
              BadInputException.class, () -> priced("3." + "1".repeat(digits + 1), code));
      assertThat(refused.problems())
          .singleElement()
          .satisfies(p -> assertThat(p.allowed()).contains("at most " + digits + " decimals"));
    }
  }

  private static Catalogue priced(String price, String currency) {
    return new CatalogueFiles().withOnlyPrice("B15,2026-01-01,,1," + price + "," + currency).read();
  }
}
