package hosewright.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.Problem;
import java.io.StringReader;
import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WrittenNumberTest {
  private static final long SEED = 20261130;

  @ParameterizedTest
  @CsvSource({
    "'121,00', 121.00",
    "'0,45', 0.45",
    "'0,450', 0.450",
    "'1,250.00', 1250.00",
    "'1,250', 1250",
    "'1250,500', 1250.500",
    "'1.234,50', 1234.50",
    "'1.234.567', 1234567",
    "'1 234,50', 1234.50",
    "'1''234.50', 1234.50",
    "'-7,5', -7.5",
  })
  void a_number_with_other_marks_is_read_as_it_was_meant(String written, String plain) {
    assertThat(WrittenNumber.plain(written)).isEqualTo(plain);
  }

  @ParameterizedTest
  @CsvSource({
    "'1,23,456'",
    "'12,50,5'",
    "'1.23.4'",
    "'1,2.3,4'",
    "'12 50'",
    "'0,123,456'",
    "'5-6'"
  })
  void what_can_be_read_in_no_way_is_not_guessed_at(String written) {
    assertThat(WrittenNumber.plain(written)).isEmpty();
  }

  /** How people write sums: CLDR's patterns of these languages, as the JDK carries them. */
  @Test
  void no_price_written_in_any_usual_way_is_suggested_as_another() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (Locale locale :
        List.of(Locale.US, Locale.GERMANY, Locale.FRANCE, new Locale("de", "CH"))) {
      DecimalFormat format =
          new DecimalFormat("#,##0.00", DecimalFormatSymbols.getInstance(locale));
      for (int i = 0; i < 500; i++) {
        BigDecimal price = BigDecimal.valueOf(random.nextLong(1, 1_000_000_000), 2);
        String written = format.format(price);
        String suggested = suggestion("money", written);

        assertThat(suggested.isEmpty() ? price : new BigDecimal(suggested))
            .as("seed %d, %s", SEED, written)
            .isEqualByComparingTo(price);
      }
    }
  }

  @Test
  void a_price_is_suggested_with_no_more_decimals_than_its_currency_has() {
    assertThat(suggestion("money", "121,00")).isEqualTo("121.00");
    assertThat(suggestion("money", "$121,00")).isEqualTo("121.00");
    assertThat(suggestion("money", "0,45 USD")).isEqualTo("0.45");
    assertThat(suggestion("money", "1,2345")).isEmpty();
    assertThat(suggestion("money", "121,00 CAD")).isEmpty();
  }

  @Test
  void a_number_in_another_unit_is_not_suggested_as_if_it_were_in_ours() {
    assertThat(suggestion("weight", "31 lb")).isEqualTo("31");
    assertThat(suggestion("weight", "31 lbs")).isEqualTo("31");
    assertThat(suggestion("weight", "31 kg")).isEmpty();
    assertThat(suggestion("size", "1.5\"")).isEqualTo("1.5");
    assertThat(suggestion("size", "38 mm")).isEmpty();
    assertThat(suggestion("count", "12,5")).isEmpty();
    assertThat(suggestion("count", "12,500")).isEqualTo("12500");
  }

  private static String suggestion(String column, String cell) {
    List<Problem> problems = new ArrayList<>();
    String text = column + ",currency\n\"" + cell.replace("\"", "\"\"") + "\",USD\n";
    CsvRow row =
        CsvFile.read(
                Map.of("t.csv", new StringReader(text)),
                "t.csv",
                List.of(column, "currency"),
                problems)
            .rows()
            .get(0);
    switch (column) {
      case "money" -> row.money(column, "currency");
      case "weight" -> row.number(column, Limits.between(0, 100_000, "lb"));
      case "size" -> row.number(column, Limits.between(0, 60, "in"));
      default -> row.wholeNumber(column, Limits.between(0, 100_000, ""));
    }
    return problems.isEmpty() ? "" : problems.get(0).nearest();
  }
}
