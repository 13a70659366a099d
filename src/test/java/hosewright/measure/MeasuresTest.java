package hosewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuresTest {

  // Exact by definition: 1 ft = 0.3048 m, 1 yd = 3 ft, 1 mi = 5280 ft (NIST Handbook 44,
  // Appendix C, general tables of units of measurement).
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          400 ft      | 400
          400ft       | 400
          1,200 feet  | 1200
          50'         | 50
          6"          | 0.5
          0.3048 m    | 1
          120 m       | 393.7007874
          3048 mm     | 10
          1 yd        | 3
          1 mi        | 5280
          5 ft 6 in   | 5.5
          5'6"        | 5.5
          12ft 3-1/2in | 12.2916666667
          +10 FT      | 10
          1.5e2 ft    | 150
          """)
  void a_length_is_read_in_any_unit_of_the_trade(String text, double feet) {
    assertThat(Measures.lengthFt("length", text)).isCloseTo(feet, within(1e-6));
  }

  // NIST SP 811 (2008), Appendix B.8: 1 psi = 6.894757 kPa; 1 ftH2O (conventional) =
  // 2.989067 kPa.
  @ParameterizedTest
  @CsvSource({
    "100 psi,100",
    "6.894757 bar,100",
    "689.4757 kPa,100",
    "0.6894757 MPa,100",
    "'1,000 psi',1000",
    "10 ft H2O,4.335275"
  })
  void a_pressure_is_read_in_any_unit_of_the_trade(String text, double psi) {
    assertThat(Measures.pressurePsi("need", text)).isCloseTo(psi, within(2e-5 * psi));
  }

  // NIST SP 811 (2008), Appendix B.8: 1 gal (US) = 3.785412 L; 1 ft3/s = 0.02831685 m3/s.
  @ParameterizedTest
  @CsvSource({
    "250 gpm,250",
    "250 gal/min,250",
    "378.5412 lpm,100",
    "378.5412 l/min,100",
    "6.30902 l/s,100",
    "22.712472 m3/h,100",
    "0.222801 cfs,100"
  })
  void a_flow_is_read_in_any_unit_of_the_trade(String text, double gpm) {
    assertThat(Measures.flowGpm("flow", text)).isCloseTo(gpm, within(2e-5 * gpm));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          2.5     | 2.5
          2.5in   | 2.5
          2.5"    | 2.5
          2-1/2   | 2.5
          2 1/2   | 2.5
          2½      | 2.5
          1¾ in   | 1.75
          3/4     | 0.75
          64mm    | 2.5
          DN 65   | 2.5
          38 mm   | 1.5
          110 mm  | 4.331
          """)
  void a_size_is_a_name_and_may_be_bare(String text, double inches) {
    assertThat(Measures.sizeIn("size", text)).isEqualTo(inches);
  }

  // Exact by definition: 32 °F = 0 °C, 212 °F = 100 °C.
  @ParameterizedTest
  @CsvSource({"60F,60", "60 degF,60", "0 C,32", "100 °C,212", "-10 °C,14"})
  void a_temperature_is_fahrenheit_or_celsius(String text, double fahrenheit) {
    assertThat(Measures.temperatureF("temperature", text)).isCloseTo(fahrenheit, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"5%,0.05", "5 %,0.05", "0.05,0.05", "0,0", "0%,0", "12.5 percent,0.125", "100%,1"})
  void a_percentage_becomes_a_fraction(String text, double fraction) {
    assertThat(Measures.percent("slack", text)).isCloseTo(fraction, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5", "1", "-5%", "101%", "five", "", "5 ft"})
  void a_percentage_that_could_be_a_multiple_is_refused(String text) {
    assertThatThrownBy(() -> Measures.percent("slack", text)).isInstanceOf(BadInputException.class);
  }

  @Test
  void a_bare_number_is_refused_where_its_unit_could_be_mistaken() {
    assertThat(problem(Measures::lengthFt, "400").nearest()).isEqualTo("400 ft");
    assertThat(problem(Measures::flowGpm, "250").nearest()).isEqualTo("250 gpm");
    assertThat(problem(Measures::pressurePsi, "7").nearest()).isEqualTo("7 psi");
    assertThat(problem(Measures::temperatureF, "60").nearest()).isEqualTo("60 °F");
    assertThat(problem(Measures::measuredIn, "1.99").nearest()).isEqualTo("1.99 in");
  }

  @Test
  void a_bare_zero_rise_needs_no_unit() {
    assertThat(Measures.riseFt("rise", "0")).isZero();
    assertThat(Measures.riseFt("rise", "-20 ft")).isEqualTo(-20);
  }

  @Test
  void the_wrong_kind_of_quantity_is_named() {
    Problem problem = problem(Measures::lengthFt, "400 psi");
    assertThat(problem.sentence())
        .startsWith("field cannot be '400 psi': psi is a pressure; give a length such as 400 ft")
        .contains("over 0 up to 50,000 ft")
        .endsWith("Did you mean '400 ft'?");
  }

  @Test
  void an_unknown_unit_gets_the_nearest_one() {
    assertThat(problem(Measures::lengthFt, "400 feeet").nearest()).isEqualTo("400 feet");
    assertThat(problem(Measures::pressurePsi, "80 pis").nearest()).isEqualTo("80 psi");
  }

  @Test
  void nothing_wrong_is_ever_suggested() {
    assertThat(problem(Measures::lengthFt, "100000").nearest()).isEmpty();
    assertThat(problem(Measures::lengthFt, "-400 psi").nearest()).isEmpty();
    assertThat(problem(Measures::percent, "150").nearest()).isEmpty();
    assertThat(problem(Measures::percent, "15").nearest()).isEqualTo("15%");
  }

  @Test
  void a_decimal_comma_is_suggested_as_a_point_and_never_as_a_thousand() {
    assertThat(problem(Measures::lengthFt, "0,450 ft").nearest()).isEqualTo("0.450 ft");
    assertThat(problem(Measures::lengthFt, "121,00 ft").nearest()).isEqualTo("121.00 ft");
    assertThat(problem(Measures::lengthFt, "1.234,5 ft").nearest()).isEqualTo("1234.5 ft");
    assertThat(problem(Measures::lengthFt, "121,00").nearest()).isEqualTo("121.00 ft");
    assertThat(problem(Measures::percent, "0,5 %").nearest()).isEqualTo("0.5 %");
    assertThat(problem(Measures::percent, "5,5").nearest()).isEqualTo("5.5%");
  }

  @Test
  void a_decimal_comma_is_not_guessed() {
    assertThat(problem(Measures::pressurePsi, "7,5 bar").nearest()).isEqualTo("7.5 bar");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 ft",
        "-5 ft",
        "50001 ft",
        "NaN ft",
        "Infinity ft",
        "1e999 ft",
        "ft",
        "",
        "  ",
        "1/0 ft",
        "0/0 ft",
        "1,23 ft",
        "4 0 0 ft",
        "--4 ft",
        "4..5 ft",
        "1 gpm",
        "1 lb"
      })
  void a_length_out_of_range_or_unreadable_is_refused(String text) {
    assertThat(problem(Measures::lengthFt, text).allowed()).contains("such as 400 ft");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 gpm", "-1 gpm", "20001 gpm", "250 psi", "250 gal"})
  void a_flow_out_of_range_is_refused(String text) {
    assertThat(problem(Measures::flowGpm, text).allowed()).contains("up to 20,000 gpm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 psi", "-1 psi", "2001 psi", "200 bar", "100 gpm"})
  void a_pressure_out_of_range_is_refused(String text) {
    assertThat(problem(Measures::pressurePsi, text).allowed()).contains("up to 2,000 psi");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-2.5", "61", "2.5 ft", "2.5 psi", "big"})
  void a_size_out_of_range_is_refused(String text) {
    assertThat(problem(Measures::sizeIn, text).allowed()).contains("such as 2.5 in");
  }

  @Test
  void a_negative_slip_is_offered_without_its_sign() {
    assertThat(problem(Measures::lengthFt, "-5 ft").nearest()).isEqualTo("5 ft");
  }

  @Test
  void a_missing_value_is_called_missing() {
    assertThat(problem(Measures::lengthFt, null).sentence()).startsWith("field is missing");
  }

  // NIST SP 811 (2008), Appendix B.8 factors, as above; 1 lb = 0.45359237 kg exactly,
  // 1 lbf = 4.448222 N.
  @Test
  void quantities_are_shown_in_us_or_si_units() {
    assertThat(UnitSystem.US.length().of(400)).isEqualTo("400 ft");
    assertThat(UnitSystem.SI.length().of(400)).isEqualTo("121.9 m");
    assertThat(UnitSystem.SI.pressure().of(100)).isEqualTo("6.89 bar");
    assertThat(UnitSystem.SI.flow().of(250)).isEqualTo("946 L/min");
    assertThat(UnitSystem.SI.temperature().of(60)).isEqualTo("15.6 °C");
    assertThat(UnitSystem.SI.weight().of(38)).isEqualTo("17.2 kg");
    assertThat(UnitSystem.SI.force().of(75)).isEqualTo("334 N");
    assertThat(UnitSystem.SI.volume().of(25.5)).isEqualTo("96.5 L");
    assertThat(UnitSystem.SI.speed().of(10)).isEqualTo("3.05 m/s");
    assertThat(UnitSystem.US.pressure().figure(50)).isEqualTo("50.0");
    assertThat(UnitSystem.SI.pressure().figure(0)).isEqualTo("0.00");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          it takes 208.5 psi at 150 gpm           | it takes 14.38 bar at 568 L/min
          adds 100 to 1,000 psi: close slowly     | adds 6.89 to 68.95 bar: close slowly
          hose: it takes 50.0 of 100.0 psi        | hose: it takes 3.45 of 6.89 bar
          velocity (20.0 against 20.0 ft/s)       | velocity (6.1 against 6.1 m/s)
          1.75 in hose, 9 x 50 ft, C = 15.5       | 1.75 in hose, 9 x 15.2 m, C = 15.5
          a fall of -10 ft at 10 ft/s             | a fall of -3 m at 3.05 m/s
          pushes back with 75 lbf, weighs 38 lb   | pushes back with 334 N, weighs 17.2 kg
          25.5 gal before it freezes at 32 °F     | 96.5 L before it freezes at 0 °C
          psi per 100 ft; NFPA 291; 1400 m/s      | psi per 100 ft; NFPA 291; 1400 m/s
          A-25NHF-15NHM rated 400 psi             | A-25NHF-15NHM rated 27.58 bar
          """)
  void a_sentence_is_restated_measure_by_measure(String us, String si) {
    assertThat(UnitSystem.SI.restated(us)).isEqualTo(si);
    assertThat(UnitSystem.US.restated(us)).isEqualTo(us);
  }

  @Test
  void units_are_asked_for_by_name() {
    assertThat(UnitSystem.read("units", "SI")).isEqualTo(UnitSystem.SI);
    assertThat(UnitSystem.read("units", "us")).isEqualTo(UnitSystem.US);
    assertThatThrownBy(() -> UnitSystem.read("units", "metric"))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("units")
        .hasMessageContaining("us (psi, gpm, ft) or si (bar, L/min, m)");
  }

  private static Problem problem(BiFunction<String, String, Double> read, String text) {
    BadInputException refused =
        catchThrowableOfType(BadInputException.class, () -> read.apply("field", text));
    assertThat(refused).as("refusal of %s", text).isNotNull();
    return refused.problems().get(0);
  }
}
