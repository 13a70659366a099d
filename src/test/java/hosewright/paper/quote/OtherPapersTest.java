package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.page.Paper;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.terms.Dealer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.text.SetTextRenderingMode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The papers beside the workbook: CSV, PDF and the plain summary. */
final class OtherPapersTest {

  static List<Quote> quotes() {
    return SampleQuotes.all();
  }

  @Test
  void a_csv_holds_every_line_and_no_formula() throws IOException {
    Quote quote = SampleQuotes.awkward();

    List<CSVRecord> rows = csv(quote);

    assertThat(rows).hasSameSizeAs(quote.lines());
    for (CSVRecord row : rows) {
      for (String cell : row) {
        assertThat(cell).doesNotMatch("(?s)[=+\\-@\t\r].*");
      }
    }
    assertThat(rows.get(0).get("item")).isEqualTo("'=1+1");
    assertThat(rows.get(0).get("extended")).isEqualTo("1000.08");
    assertThat(rows.get(1).get("note")).isEqualTo("'@SUM(A1:A9)");
    assertThat(rows.get(2).get("description")).isEqualTo("Item 3");
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void a_pdf_says_every_item_and_total(Quote quote) throws IOException {
    String text;
    int pages;
    try (PDDocument document = Loader.loadPDF(pdf(quote))) {
      text = new PDFTextStripper().getText(document);
      pages = document.getNumberOfPages();
    }

    for (QuoteLine line : quote.lines()) {
      assertThat(text).contains(String.format("%,.2f", line.price().extended().getAmount()));
    }
    assertThat(text)
        .contains("Total " + String.format("%,.2f", quote.total().getAmount()) + " USD")
        .contains("Quote " + quote.number())
        .contains("Page " + pages + " of " + pages)
        .contains("Valid until " + quote.validity().validUntil());
    // Each page of a long table starts with its heading.
    assertThat(text.split("Description", -1).length - 1)
        .isGreaterThanOrEqualTo(quote.lines().size() > 40 ? 3 : 1);
  }

  @ParameterizedTest
  @MethodSource("quotes")
  void the_same_quote_gives_the_same_pdf(Quote quote) throws IOException {
    assertThat(pdf(quote)).isEqualTo(pdf(quote));
  }

  @Test
  void a_long_note_of_the_dealer_stays_clear_of_what_stands_beside_it() throws IOException {
    Dealer wordy =
        new Dealer(
            "Quillback Hose & Coupling",
            List.of("14 Capstan Row"),
            "555-0142",
            "",
            "Everything here is invented. ".repeat(12).strip());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuotePdf.write(SampleQuotes.hydrantLine(), wordy, Paper.LETTER, out);
    List<String> lines = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      double wide = document.getPage(0).getMediaBox().getWidth();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) {
              TextPosition last = letters.get(letters.size() - 1);
              if (text.contains("invented")) {
                lines.add(text);
                assertThat(last.getXDirAdj() + last.getWidthDirAdj())
                    .as(text)
                    .isLessThan((float) (wide * 0.7));
              }
            }
          };
      stripper.getText(document);
    }
    assertThat(lines).hasSizeGreaterThan(2);
  }

  @Test
  void the_buyers_name_stands_bold_and_a_note_that_begins_as_its_line_does_not()
      throws IOException {
    Dealer wordy =
        new Dealer(
            "Quillback Hose & Coupling",
            List.of("14 Capstan Row"),
            "555-0142",
            "",
            "For repairs ring the yard.");
    Quote quote = SampleQuotes.hydrantLine();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuotePdf.write(quote, wordy, Paper.LETTER, out);

    assertThat(boldLetters(out.toByteArray()))
        .contains("For " + quote.customer().name())
        .doesNotContain("For repairs");
  }

  /** All letters drawn with an outline, which is how the one font is made bold, in their order. */
  private static String boldLetters(byte[] pdf) throws IOException {
    StringBuilder bold = new StringBuilder();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
              if (getGraphicsState().getTextState().getRenderingMode()
                  == RenderingMode.FILL_STROKE) {
                bold.append(letter.getUnicode());
              }
              super.processTextPosition(letter);
            }
          };
      stripper.addOperator(new SetTextRenderingMode(stripper));
      stripper.getText(document);
    }
    return bold.toString();
  }

  @Test
  void the_summary_says_what_comes_what_it_does_and_what_to_check() {
    String summary = PlainSummary.text(SampleQuotes.hydrantLine());

    assertThat(summary)
        .contains("9 sections of 1.75 in hose, 50 ft each, with 1.5 in couplings.")
        .contains("95 gallons a minute arrive with 57.29 psi; 50 psi is needed.")
        .contains("That the source ends in 2.5 NH male")
        .contains("Sudden closure: Upper bound with the fastest wave; close slowly.")
        .contains("in all 1,701.17 USD.");
  }

  @Test
  void the_summary_of_a_line_that_falls_short_says_so_and_what_would_do() {
    String summary = PlainSummary.text(SampleQuotes.supplyLine());

    assertThat(summary)
        .contains("This line falls short: 1.3 psi arrives")
        .contains("Instead: A source of 58.7 psi at the hydrant would do.")
        .contains("Not included, still to be found: Adapter 4.5 NH female swivel x 5 Storz");
  }

  private static List<CSVRecord> csv(Quote quote) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LinesCsv.write(quote, out);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(out.toString(StandardCharsets.UTF_8))).getRecords();
  }

  private static byte[] pdf(Quote quote) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuotePdf.write(quote, SampleQuotes.QUILLBACK, Paper.A4, out);
    return out.toByteArray();
  }
}
