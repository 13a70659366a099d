package hosewright.door.shell.line;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CsvText;
import hosewright.door.shell.screen.Screen;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.measure.UnitSystem;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTextTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static LinePlan plan;

  @BeforeAll
  static void plan_the_counter_job() throws IOException {
    Map<String, Reader> files = new LinkedHashMap<>();
    for (String file : CatalogueReader.FILES) {
      files.put(file, Files.newBufferedReader(Path.of("catalogue", file)));
    }
    Catalogue catalogue = CatalogueReader.readTables(CsvText.all(files));
    plan =
        new Planner(
                catalogue, catalogue.listPricesOn(DAY), DAY, CurrencyUnit.USD, LocalThreads.none())
            .plan(
                JobForm.read(
                    Map.of(
                        JobField.FROM, "2.5 NH male hydrant",
                        JobField.TO, "1.5 NH nozzle",
                        JobField.LENGTH, "400 ft",
                        JobField.SECTION, "50 ft",
                        JobField.SIZE, "1.75 in",
                        JobField.FLOW, "150 gpm",
                        JobField.NEED, "50 psi",
                        JobField.SOURCE_PRESSURE, "240 psi")));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void the_hydraulics_fit_eighty_columns(UnitSystem units) {
    Screen screen = new Screen(80, false);
    String text = new HydraulicsText(plan, screen, units).body();
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    assertThat(text).contains("H175-DJ-50-15NH, 9 of 9").contains("with the nozzle shut");
    assertThat(WorkingText.of(plan.hydraulics().working(), screen, units).lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  /** No sentence, heading or figure is left in US units; what the catalogue wrote stays. */
  @Test
  void text_in_si_units_has_no_us_measure_left() {
    String text = PlanText.of(plan, Screen.PIPED, UnitSystem.SI);
    String goods = text.substring(text.indexOf("\nGoods"), text.indexOf("\nTake care"));
    String line = text.substring(text.indexOf("\nThe line"), text.indexOf("\nPressure"));
    assertThat(text.replace(goods, "").replace(line, ""))
        .contains("568 L/min")
        .contains("3.45 bar")
        .doesNotContainPattern("\\d (psi|gpm|ft|lb|lbf|gal)\\b");
  }

  @Test
  void text_in_us_units_has_no_si_measure() {
    assertThat(PlanText.of(plan, Screen.PIPED))
        .contains("150 gpm")
        .doesNotContainPattern("\\d (bar|L/min|kg|N)\\b");
  }

  @Test
  void the_plan_shows_what_the_other_coefficient_would_give() {
    assertThat(PlanText.of(plan, Screen.PIPED))
        .contains("Friction in the hose is by coefficient C = 15.5 from the catalogue's hose.")
        .contains("With C = 10 (disputed: taught as 15.5 and as 10; measure the hose; City of")
        .contains("the hose would lose 101.3 psi");
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void the_answer_comes_first_and_fits_a_screen(int columns) {
    String text = PlanText.brief(plan, new Screen(columns, false));

    assertThat(text.lines()).hasSizeLessThanOrEqualTo(24);
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(columns));
    assertThat(text)
        .contains("This line does it", "9 x H175-DJ-50-15NH", "Arrives: 150 gpm", "Take care")
        .contains("more: --show cautions", "--full shows all of it")
        .doesNotContain("Joints, source first");
  }

  @Test
  void parts_of_a_plan_are_shown_by_name() {
    String text = PlanText.of(plan, Screen.PIPED, UnitSystem.US, EnumSet.of(PlanSections.GOODS));

    assertThat(text)
        .contains("This line does it", "Goods, prices of")
        .doesNotContain("Joints, source first", "--full");
  }

  @Test
  void the_working_stays_in_the_units_its_formulas_are_taught_in() {
    String text = WorkingText.of(plan.hydraulics().working(), Screen.PIPED, UnitSystem.SI);
    assertThat(text)
        .contains("C (Q/100)^2 (L/100)")
        .contains("= 15.5 x (150/100)^2 x (450/100)")
        .contains("= 156.94 psi (10.82 bar)");
  }
}
