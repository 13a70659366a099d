package hosewright.csv;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as anybody writes them. */
final class PlainNumberTest {

  @ParameterizedTest
  @CsvSource({"2.5, 2.5", "400.0, 400", "12000000.0, 12000000", "0.0000625, 0.0000625", "0.0, 0"})
  void a_number_is_written_without_exponent_and_without_zeros_behind_it(
      double number, String written) {
    assertThat(PlainNumber.of(number)).isEqualTo(written);
  }
}
