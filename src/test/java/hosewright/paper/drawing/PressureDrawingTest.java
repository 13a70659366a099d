package hosewright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.Hydraulics.Station;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.PressureDrawing.LimitLine;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PressureDrawingTest {
  private static final List<Station> FALLING =
      List.of(
          new Station("source", 0, 0, 150, 160),
          new Station("hose 1", 100, 0, 110, 160),
          new Station("hose 2", 200, 0, 70, 160),
          new Station("wye", 200, 0, 60, 160));

  private static String drawing(UnitSystem units, int width) {
    return PressureDrawing.text(
        FALLING,
        List.of(new LimitLine('-', "needed at the appliance", 50)),
        OptionalDouble.of(272),
        units,
        width);
  }

  private static List<String> rows(String drawing) {
    return drawing.lines().filter(line -> line.contains("|")).toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 200})
  void a_drawing_fits_its_width_in_ascii(int width) {
    String drawing = drawing(UnitSystem.US, width);
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(drawing)).isTrue();
    assertThat(rows(drawing)).allSatisfy(row -> assertThat(row).hasSizeLessThanOrEqualTo(width));
  }

  @Test
  void each_limit_is_a_line_across_at_its_own_pressure() {
    List<String> rows = rows(drawing(UnitSystem.US, 60));
    assertThat(rows.get(0)).matches(" +272.0 \\|=+");
    assertThat(rows).anySatisfy(row -> assertThat(row).matches(" +50.0 \\|-+"));
    assertThat(rows).anySatisfy(row -> assertThat(row).matches(" +0.0 \\|_+"));
    assertThat(drawing(UnitSystem.US, 60))
        .contains("-  needed at the appliance, 50 psi")
        .contains("=  least working pressure of its parts, 272 psi");
  }

  /** Read back from the picture: higher on paper is more pressure. */
  @Test
  void the_flowing_pressure_falls_from_left_to_right_and_the_shut_one_stays() {
    List<String> rows = rows(drawing(UnitSystem.US, 80));
    int last = -1;
    for (int column = 10; column < 80; column++) {
      for (int row = 0; row < rows.size() - 1; row++) {
        boolean marked = column < rows.get(row).length() && rows.get(row).charAt(column) == '*';
        if (marked) {
          assertThat(row).as("column %d", column).isGreaterThanOrEqualTo(last);
          last = row;
        }
      }
    }
    assertThat(rows).filteredOn(row -> row.contains("ooooo")).hasSize(1);
  }

  @Test
  void a_line_that_runs_out_of_pressure_is_drawn_below_zero() {
    List<Station> falling =
        List.of(new Station("source", 0, 0, 50, 50), new Station("hose", 100, 0, -30, 50));
    String drawing =
        PressureDrawing.text(falling, List.of(), OptionalDouble.empty(), UnitSystem.US, 60);
    List<String> rows = rows(drawing);
    int zero =
        rows.indexOf(rows.stream().filter(row -> row.contains("___")).findFirst().orElseThrow());
    assertThat(rows.subList(zero + 1, rows.size() - 1)).anyMatch(row -> row.contains("*"));
    assertThat(rows.get(rows.size() - 2)).startsWith("   -30.0 |");
  }

  @Test
  void si_units_are_written_on_the_axes() {
    // NIST SP 811 (2008), Appendix B.8: 272 psi is 18.75 bar; 200 ft is 60.96 m exactly.
    String drawing = drawing(UnitSystem.SI, 80);
    assertThat(drawing).contains("   18.75 |===").contains("     bar |0").contains("61 m");
  }
}
