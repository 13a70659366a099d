package hosewright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.paper.page.Paper;
import hosewright.paper.page.PdfPage;
import hosewright.paper.page.PdfPage.Path;
import hosewright.thread.Families;
import hosewright.thread.Gender;
import hosewright.thread.ThreadTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The strip as it lies in the file: every length is measured on the page itself. */
final class StripPdfTest {
  /** A PDF's unit is 1/72 in (ISO 32000-1, 8.3.2.3). */
  private static final double MM_PER_POINT = 25.4 / 72;

  private static final double TOLERANCE_MM = 0.1;

  @ParameterizedTest
  @EnumSource(Paper.class)
  void a_mark_stands_at_pi_times_every_males_diameter(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      List<Double> marks =
          Stream.concat(
                  marksMm(PdfPage.of(document.getPage(0))).stream(),
                  marksMm(PdfPage.of(document.getPage(1))).stream())
              .sorted()
              .toList();
      List<Double> wanted = circumferencesMm();

      for (double circumference : wanted) {
        assertThat(marks)
            .anySatisfy(mark -> assertThat(mark).isCloseTo(circumference, within(TOLERANCE_MM)));
      }
      for (double mark : marks) {
        assertThat(wanted)
            .anySatisfy(
                circumference -> assertThat(mark).isCloseTo(circumference, within(TOLERANCE_MM)));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void published_diameters_are_found_on_the_first_page(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      List<Double> marks = marksMm(PdfPage.of(document.getPage(0)));

      // Major diameters: 1.5-9 and 2.5-7.5 NH, Machinery's Handbook 27th ed. p.1875-1876 (NFPA
      // 1963-1993); 1-11.5 NPSH, ASME B1.20.7; 2 NPT, ASME B36.10M (the pipe's outside); G 1,
      // ISO 228-1 (33.249 mm).
      for (double diameterMm : new double[] {50.546, 77.94244, 32.89554, 60.325, 33.249}) {
        assertThat(marks)
            .anySatisfy(
                mark -> assertThat(mark).isCloseTo(Math.PI * diameterMm, within(TOLERANCE_MM)));
      }
    }
  }

  @Test
  void the_bar_is_as_long_as_it_says() throws IOException {
    assertThat(barMm(Paper.LETTER)).isCloseTo(152.4, within(TOLERANCE_MM));
    assertThat(barMm(Paper.A4)).isCloseTo(150, within(TOLERANCE_MM));
    assertThat(text(Paper.LETTER)).contains("6 inches (152.4 mm) exactly");
    assertThat(text(Paper.A4)).contains("150 mm exactly");
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void the_teeth_of_each_comb_stand_one_pitch_apart(Paper paper) throws IOException {
    List<Double> counts =
        ThreadTable.all().stream()
            .filter(row -> row.threadsPerInch().isPresent())
            .map(row -> row.threadsPerInch().getAsDouble())
            .distinct()
            .sorted()
            .toList();
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      List<Path> combs =
          PdfPage.of(document.getPage(1)).outlines().stream()
              .filter(path -> path.corners().size() > 8)
              .sorted(Comparator.comparingDouble(Path::top).reversed())
              .toList();

      assertThat(combs).hasSameSizeAs(counts);
      for (int i = 0; i < counts.size(); i++) {
        List<Double> tips = tips(combs.get(i));
        assertThat((tips.get(tips.size() - 1) - tips.get(0)) * MM_PER_POINT)
            .isCloseTo((tips.size() - 1) * 25.4 / counts.get(i), within(TOLERANCE_MM));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everything_lies_within_the_printable_page(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      for (int number = 0; number < 2; number++) {
        PdfPage page = PdfPage.of(document.getPage(number));
        double wide = document.getPage(number).getMediaBox().getWidth();
        for (Path path : page.outlines()) {
          assertThat(path.left()).isGreaterThan(36);
          assertThat(path.right()).isLessThan(wide - 36);
          assertThat(path.bottom()).isGreaterThan(40);
        }
      }
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
    }
  }

  @Test
  void what_can_go_wrong_is_said_on_the_sheet() throws IOException {
    assertThat(text(Paper.LETTER))
        .contains("never the female")
        .contains("Worn, dented or painted threads read wrong, mostly small")
        .contains("Print at 100 %")
        .contains("ask the local fire service");
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void the_same_paper_gives_the_same_bytes(Paper paper) throws IOException {
    assertThat(pdf(paper)).isEqualTo(pdf(paper));
  }

  /** How far each thread's mark lies from the strip's start, when the pieces are glued. */
  private static List<Double> marksMm(PdfPage page) {
    List<Path> pieces =
        page.outlines().stream()
            .filter(path -> path.corners().size() == 4 && path.right() - path.left() > 400)
            .filter(path -> path.top() - path.bottom() > 30)
            .sorted(Comparator.comparingDouble(Path::top).reversed())
            .toList();
    List<Double> marks = new ArrayList<>();
    for (Path line : page.lines()) {
      if (Math.abs(line.strokePt() - StripPicture.MARK_STROKE) < 1e-6) {
        double before = 0;
        for (Path piece : pieces) {
          if (line.y(0) <= piece.top() && line.y(1) >= piece.bottom()) {
            marks.add((before + line.x(0) - piece.left()) * MM_PER_POINT);
          }
          before += piece.right() - piece.left();
        }
      }
    }
    return marks;
  }

  private static List<Double> circumferencesMm() {
    return ThreadTable.all().stream()
        .filter(row -> row.majorMaxIn().isPresent())
        .filter(
            row ->
                Families.find(row.family()).orElseThrow().halves().genders().contains(Gender.MALE))
        .map(row -> Math.PI * row.majorMaxIn().getAsDouble() * 25.4)
        .toList();
  }

  private static List<Double> tips(Path comb) {
    return comb.corners().stream()
        .filter(corner -> corner[1] - comb.bottom() < 1e-3)
        .map(corner -> corner[0])
        .toList();
  }

  private static double barMm(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      Path bar = PdfPage.of(document.getPage(0)).outlines().get(0);
      return (bar.right() - bar.left()) * MM_PER_POINT;
    }
  }

  private static String text(Paper paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(paper))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private static byte[] pdf(Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StripPdf.write(paper, out);
    return out.toByteArray();
  }
}
