package hosewright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.paper.drawing.EndShape.Place;
import hosewright.paper.page.Picture.Outline;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings of ends and joints, against the figures they claim to be to scale with. */
final class EndDrawingTest {
  private static final double POINTS_PER_INCH = 100;

  @ParameterizedTest
  @CsvSource({
    // Machinery's Handbook 27th ed. p.1875-1876 (NFPA 1963-1993): major diameter, threads per inch.
    "1.5 NH male, 1.9900, 9",
    "2.5 NH male, 3.0686, 7.5",
    "4.5 NH male, 5.7609, 4",
    // ASME B1.20.7 Table 1: 1-11.5 NPSH.
    "1 NPSH male, 1.2951, 11.5"
  })
  void crests_lie_at_the_major_diameter_and_one_pitch_apart(
      String end, double majorIn, double threadsPerInch) {
    EndShape shape = EndShape.of(End.parse(end));
    Outline upper = (Outline) shape.marks(new Place(1000, 500, POINTS_PER_INCH, true)).get(0);

    List<Double> crests = crests(upper.corners(), 500 - majorIn / 2 * POINTS_PER_INCH);

    assertThat(crests).hasSizeGreaterThanOrEqualTo(4);
    for (int i = 1; i < crests.size(); i++) {
      assertThat(crests.get(i) - crests.get(i - 1))
          .isCloseTo(POINTS_PER_INCH / threadsPerInch, within(1e-6));
    }
  }

  @Test
  void a_pipe_thread_narrows_by_one_in_sixteen() {
    // ASME B1.20.1 section 1.4: taper 1 in 16 measured on the diameter.
    EndShape shape = EndShape.of(End.parse("2 NPT male"));
    List<Double> corners = ((Outline) shape.marks(new Place(0, 0, 1, true)).get(0)).corners();
    // Corner 3 is the first crest from the shoulder, the one before the last two pairs the last.
    double firstX = corners.get(6);
    double firstY = corners.get(7);
    double lastX = corners.get(corners.size() - 8);
    double lastY = corners.get(corners.size() - 7);

    assertThat((lastY - firstY) / (lastX - firstX)).isCloseTo(1 / 32.0, within(1e-9));
  }

  @Test
  void the_ruler_is_as_long_as_the_figures() {
    // 2.5-7.5 NH measures 3.0686 in: Machinery's Handbook 27th ed. p.1876 (NFPA 1963-1993).
    List<String> lines = EndDrawing.text(End.parse("2.5 NH male"), 80).lines().toList();
    int zero = lines.get(0).indexOf('0');
    double columnsPerInch = lines.get(0).indexOf('3') - zero;
    String across = lines.get(2);

    assertThat((across.lastIndexOf('|') - across.indexOf('|')) / (columnsPerInch / 3))
        .isCloseTo(3.0686, within(0.5 / (columnsPerInch / 3)));
    assertThat(across).endsWith("| 3.0686");
    assertThat(lines.get(4).chars().filter(c -> c == '/' || c == '\\').count())
        .isEqualTo((long) columnsPerInch / 3);
  }

  @Test
  void every_end_and_joint_can_be_drawn_on_eighty_columns_in_plain_letters() {
    for (End end : Families.ends()) {
      plain(EndDrawing.text(end, 80));
      assertThat(EndDrawing.svg(end)).startsWith("<svg ").doesNotContain("NaN");
      End other = end.opposite();
      plain(JointDrawing.text(end, other, Mating.of(end, other)));
      assertThat(JointDrawing.svg(end, other, Mating.of(end, other)))
          .startsWith("<svg ")
          .doesNotContain("NaN");
    }
  }

  @Test
  void a_drawing_shows_the_gasket_only_where_it_is_and_says_what_seals() {
    assertThat(joint("2 NPT male", "2 NPSH female swivel"))
        .contains("#+=")
        .contains("# the gasket seals, here; o turns by itself");
    assertThat(joint("2 NPT male", "2 NPT female"))
        .doesNotContain("#")
        .contains("the threads seal, with sealant on them");
    assertThat(joint("5 Storz", "5 Storz")).contains("-----#    ><    #-----");
    assertThat(joint("2 NPSH male", "2 NPT female")).contains("!!").doesNotContain("><");
  }

  @Test
  void the_two_halves_of_a_joint_mirror_each_other() {
    List<String> one = joint("2 NPT male", "2 NPSH female").lines().toList();
    List<String> other = joint("2 NPSH female", "2 NPT male").lines().toList();

    for (int row : new int[] {2, 4}) {
      String turned =
          new StringBuilder(other.get(row).strip())
              .reverse()
              .toString()
              .replace('/', '*')
              .replace('\\', '/')
              .replace('*', '\\')
              .replace("<>", "><");
      assertThat(one.get(row).strip()).isEqualTo(turned);
    }
  }

  private static String joint(String a, String b) {
    End one = End.parse(a);
    End other = End.parse(b);
    Verdict verdict = Mating.of(one, other);
    return JointDrawing.text(one, other, verdict);
  }

  private static void plain(String drawing) {
    assertThat(drawing.lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80).matches("[ -~]*"));
  }

  /** The x of every corner that lies at this y, from left to right. */
  private static List<Double> crests(List<Double> corners, double y) {
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < corners.size(); i += 2) {
      if (Math.abs(corners.get(i + 1) - y) < 1e-6) {
        found.add(corners.get(i));
      }
    }
    return found;
  }
}
