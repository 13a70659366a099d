package hosewright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.AbstractListAssert;
import org.assertj.core.api.ObjectAssert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways that people have surveyed, as CSV files. */
class RouteFileTest {
  @TempDir Path folder;

  @Test
  void the_units_are_those_of_the_headings() throws IOException {
    Route feet = route("distance (ft),elevation (ft),note", "0,612,pump", "400,590.5,road 2 lanes");
    Route metres = route("Elevation m,Distance m", "186.5,0", "180,121.92");

    assertThat(feet.places())
        .containsExactly(
            new Route.Place(0, 612, "pump"), new Route.Place(400, 590.5, "road 2 lanes"));
    assertThat(feet.ground().riseFt()).isEqualTo(-21.5);
    assertThat(metres.lengthFt()).isCloseTo(400, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void every_row_that_cannot_be_used_is_named_by_its_line() {
    assertRefused(
            "distance (ft),elevation (ft),note",
            "0,0,",
            "two hundred,-40,",
            "300,,brook",
            "400,-50,left; then right",
            "500,99999,")
        .extracting(Problem::field)
        .containsExactly("way.csv line 3", "way.csv line 4", "way.csv line 5", "way.csv line 6");
  }

  @Test
  void a_heading_names_its_unit() {
    assertRefused("distance,elevation (ft),note", "0,0,", "10,1,")
        .singleElement()
        .isEqualTo(
            new Problem(
                "way.csv heading",
                "distance",
                "the unit in the heading: ft or m",
                "distance (ft)"));
    assertRefused("distanse (ft),elevation (ft)", "0,0", "10,1")
        .first()
        .extracting(Problem::nearest)
        .isEqualTo("distance");
    assertRefused("distance (ft),note", "0,pump").hasSize(1);
    assertRefused("distance (ft),elevation (psi)", "0,0").hasSize(1);
  }

  @Test
  void what_lies_back_or_climbs_more_than_it_is_long_is_refused() {
    assertRefused("distance (ft),elevation (ft)", "0,0", "300,10", "200,20", "260,120")
        .extracting(Problem::value)
        .containsExactly("20 ft at 200 ft", "120 ft at 260 ft");
    assertRefused("distance (ft),elevation (ft)", "40,0", "300,10")
        .singleElement()
        .extracting(Problem::allowed)
        .isEqualTo("the source first, at 0 ft");
    assertRefused("distance (ft),elevation (ft)", "0,0").hasSize(1);
    assertRefused("").hasSize(1);
  }

  @Test
  void a_note_with_hidden_characters_is_refused_with_its_line() {
    assertRefused("distance (ft),elevation (ft),note", "0,0,", "10,1,ro\u202Ead")
        .first()
        .extracting(Problem::field)
        .isEqualTo("way.csv line 3");
  }

  @Test
  void a_job_file_has_its_route_beside_it_and_takes_in_all_of_it() throws IOException {
    write("distance (ft),elevation (ft),note", "0,0,", "300,-40,brook", "500,5,");
    Path job = folder.resolve("job.yaml");
    Files.writeString(job, "from: 2.5 NH male pump\nroute: way.csv\n");

    Map<JobField, String> answers = JobFile.read(job).answers();
    Files.delete(folder.resolve("way.csv"));

    assertThat(answers.get(JobField.ROUTE))
        .isEqualTo("0 ft at 0 ft; -40 ft at 300 ft, brook; 5 ft at 500 ft");
    assertThat(JobText.parse(JobText.write(answers))).isEqualTo(answers);
    assertThat(JobText.write(answers)).contains("route:\n  - 0 ft at 0 ft\n");
  }

  @Test
  void a_file_that_is_not_there_or_too_long_is_named() throws IOException {
    assertThatThrownBy(
            () -> RouteFile.putInto(Map.of(JobField.ROUTE, "gone.csv"), Optional.of(folder)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("gone.csv");
    Files.writeString(folder.resolve("way.csv"), "x".repeat(300 * 1024));
    assertThatThrownBy(() -> RouteFile.read(folder.resolve("way.csv")))
        .hasMessageContaining("256 KiB");
    assertThatThrownBy(() -> RouteFile.read(folder)).isInstanceOf(BadInputException.class);
  }

  private AbstractListAssert<?, List<? extends Problem>, Problem, ObjectAssert<Problem>>
      assertRefused(String... lines) {
    try {
      write(lines);
      RouteFile.read(folder.resolve("way.csv"));
    } catch (BadInputException e) {
      return assertThat(e.problems());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    throw new AssertionError("taken: " + Arrays.toString(lines));
  }

  private Route route(String... lines) throws IOException {
    write(lines);
    return JobField.ROUTE.read(RouteFile.read(folder.resolve("way.csv")));
  }

  private void write(String... lines) throws IOException {
    Files.writeString(folder.resolve("way.csv"), String.join("\n", lines) + "\n");
  }
}
