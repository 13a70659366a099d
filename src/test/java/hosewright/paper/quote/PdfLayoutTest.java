package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.page.Paper;
import hosewright.quote.Quote;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Where text stands on the pages of a quote, read back from the file. */
final class PdfLayoutTest {
  /** Letters one after another on one line, in points from the upper left corner. */
  private record Box(int page, String text, double left, double right, double top, double foot) {
    boolean over(Box other) {
      return page == other.page
          && Math.min(right, other.right) - Math.max(left, other.left) > 0.5
          && Math.min(foot, other.foot) - Math.max(top, other.top) > 0.5;
    }
  }

  @Test
  void nothing_is_cut_or_over_another_and_totals_and_signature_stand_whole() throws IOException {
    for (int seed = 0; seed < 8; seed++) {
      holds(seed);
    }
  }

  @Test
  @Tag("long")
  void two_hundred_quotes_stand_well_on_their_pages() throws IOException {
    for (int seed = 0; seed < 200; seed++) {
      holds(seed);
    }
  }

  private static void holds(int seed) throws IOException {
    Quote quote = SampleQuotes.random(new Random(seed));
    Paper paper = seed % 2 == 0 ? Paper.LETTER : Paper.A4;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuotePdf.write(quote, SampleQuotes.QUILLBACK, paper, out);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      List<Box> boxes = boxes(document);
      double wide = document.getPage(0).getMediaBox().getWidth();
      double high = document.getPage(0).getMediaBox().getHeight();
      for (Box box : boxes) {
        assertThat(box.left()).as("seed %d: %s", seed, box).isGreaterThan(30);
        assertThat(box.right()).as("seed %d: %s", seed, box).isLessThan(wide - 30);
        assertThat(box.top()).as("seed %d: %s", seed, box).isGreaterThan(20);
        assertThat(box.foot()).as("seed %d: %s", seed, box).isLessThan(high - 20);
      }
      for (int i = 0; i < boxes.size(); i++) {
        for (int j = i + 1; j < boxes.size() && boxes.get(j).page() == boxes.get(i).page(); j++) {
          assertThat(boxes.get(i).over(boxes.get(j)))
              .as("seed %d: %s over %s", seed, boxes.get(i), boxes.get(j))
              .isFalse();
        }
      }
      whole(seed, quote, boxes);
    }
  }

  private static void whole(int seed, Quote quote, List<Box> boxes) {
    int subtotal = pageOf(boxes, "Subtotal");
    assertThat(pageOf(boxes, "Tax 6.25 %")).as("seed %d", seed).isEqualTo(subtotal);
    assertThat(pageOf(boxes, "Total USD")).as("seed %d", seed).isEqualTo(subtotal);
    String last = quote.lines().get(quote.lines().size() - 1).goods().item();
    assertThat(pageOf(boxes, last.substring(0, 4)))
        .as("seed %d: totals under a line", seed)
        .isEqualTo(subtotal);
    int signed = pageOf(boxes, "Accepted for");
    assertThat(pageOf(boxes, "Figures are for planning")).as("seed %d", seed).isEqualTo(signed);
    assertThat(pageOf(boxes, "Signature and date")).as("seed %d", seed).isEqualTo(signed);
    for (int page = 1; page <= boxes.get(boxes.size() - 1).page(); page++) {
      int one = page;
      // Head, foot and page number alone would be three.
      assertThat(boxes.stream().filter(box -> box.page() == one))
          .as("seed %d: page %d holds more than a sentence", seed, page)
          .hasSizeGreaterThan(6);
      assertThat(tableHeads(boxes, page) == 0 || figures(boxes, page) > 0)
          .as("seed %d: page %d has lines under its heading", seed, page)
          .isTrue();
    }
  }

  private static long tableHeads(List<Box> boxes, int page) {
    return boxes.stream()
        .filter(box -> box.page() == page && box.text().startsWith("Description"))
        .count();
  }

  private static long figures(List<Box> boxes, int page) {
    return boxes.stream().filter(box -> box.page() == page && box.text().startsWith("IT-")).count();
  }

  /** The page where words stand last. */
  private static int pageOf(List<Box> boxes, String words) {
    return boxes.stream()
        .filter(box -> box.text().startsWith(words))
        .mapToInt(Box::page)
        .max()
        .orElseThrow(() -> new AssertionError(words));
  }

  /** Each piece of text as it was shown: what starts anew or leaves a gap is another. */
  private static List<Box> boxes(PDDocument document) throws IOException {
    List<Box> boxes = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          private StringBuilder text = new StringBuilder();
          private TextPosition first;
          private TextPosition last;

          @Override
          protected void processTextPosition(TextPosition letter) {
            boolean goesOn =
                last != null
                    && Math.abs(letter.getYDirAdj() - last.getYDirAdj()) < 0.01
                    && Math.abs(letter.getXDirAdj() - last.getXDirAdj() - last.getWidthDirAdj())
                        < 0.5;
            if (!goesOn) {
              close();
              first = letter;
            }
            text.append(letter.getUnicode());
            last = letter;
          }

          private void close() {
            if (first != null && !text.toString().isBlank()) {
              // The letters of Liberation Sans reach 0.73 em over the line and 0.2 under it.
              double size = first.getFontSizeInPt();
              boxes.add(
                  new Box(
                      getCurrentPageNo(),
                      text.toString(),
                      first.getXDirAdj(),
                      last.getXDirAdj() + last.getWidthDirAdj(),
                      first.getYDirAdj() - 0.73 * size,
                      first.getYDirAdj() + 0.2 * size));
            }
            text = new StringBuilder();
            first = null;
            last = null;
          }

          @Override
          protected void endPage(org.apache.pdfbox.pdmodel.PDPage page) {
            close();
          }
        };
    stripper.getText(document);
    return boxes;
  }
}
