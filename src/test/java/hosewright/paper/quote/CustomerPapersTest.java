package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.paper.json.Json;
import hosewright.paper.page.Paper;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Discount;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.KeptPrices;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.DealerTerms;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What all five papers of a quote say to its buyer, and what none of them may. */
final class CustomerPapersTest {

  @Test
  void every_paper_carries_offers_discount_notes_and_terms() throws IOException {
    papers(amended())
        .forEach(
            (paper, text) -> {
              String flat = text.replaceAll("\\s+", " ");
              assertThat(flat).as(paper).contains("Hydrant training");
              if (!paper.equals("csv")) {
                assertThat(flat).as(paper).contains("Gate code 4711");
                assertThat(flat).as(paper).contains("No returns of hose cut to size");
              }
              if (!paper.equals("summary")) {
                assertThat(flat).as(paper).contains("10 % off: first order");
              }
            });
  }

  @Test
  void no_paper_says_a_word_of_cost_or_margin() throws IOException {
    papers(amended())
        .forEach(
            (paper, text) ->
                assertThat(
                        text.toLowerCase(Locale.ROOT)
                            .replace("what it costs", "")
                            .replace("pressure margin", ""))
                    .as(paper)
                    .doesNotContain("margin")
                    .doesNotContain("floor")
                    .doesNotContain("supplier")
                    .doesNotContainPattern("\\bcost"));
  }

  @Test
  void a_discounted_line_recalculates_to_its_own_price_in_the_workbook() throws IOException {
    // 118.50 less 10 % is 106.65 each; the workbook looks it up and refuses to differ.
    assertThat(amended().lines().get(0).price().unitPrice()).isEqualTo(Money.parse("USD 106.65"));
    assertThat(papers(amended()).get("workbook")).contains("106.65");
  }

  /** A quote with everything a person can put on it by hand. */
  private static Quote amended() {
    Quote base = SampleQuotes.hydrantLine();
    Amendments amendments =
        Amendments.NONE
            .withDiscount("DJ175-50-NH15", new Discount(new BigDecimal("0.10"), "first order"))
            .withLine(
                new ExtraLine(
                    Inclusion.OPTIONAL,
                    Optional.empty(),
                    "Hydrant training",
                    1,
                    Optional.of(Money.parse("USD 80.00")),
                    Optional.empty()))
            .withNotes(List.of("Gate code 4711"))
            .withTerms(List.of("No returns of hose cut to size"));
    Catalogue nothing = new Catalogue(List.of(), List.of(), List.of(), List.of());
    return new QuoteMaker(nothing, new DealerTerms(List.of(), Map.of()))
        .make(
            new QuoteMaker.Draft(
                new Quote.Name(base.number(), 2),
                base.customer(),
                base.validity().date(),
                new Basis(base.basis().title(), base.basis().jobYaml(), base.plan()),
                amendments,
                base.validity().madeAt()),
            new KeptPrices(base, (item, quantity) -> Optional.empty()));
  }

  private static Map<String, String> papers(Quote quote) throws IOException {
    Map<String, String> papers = new LinkedHashMap<>();
    papers.put("workbook", workbook(quote));
    papers.put("pdf", pdf(quote));
    ByteArrayOutputStream csv = new ByteArrayOutputStream();
    LinesCsv.write(quote, csv);
    papers.put("csv", csv.toString(StandardCharsets.UTF_8));
    papers.put("json", Json.write(quote));
    papers.put("summary", PlainSummary.text(quote));
    return papers;
  }

  private static String workbook(Quote quote) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    QuoteWorkbook.write(quote, SampleQuotes.QUILLBACK, Paper.LETTER, bytes);
    StringBuilder text = new StringBuilder();
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
      DataFormatter shown = new DataFormatter(Locale.ROOT);
      shown.setUseCachedValuesForFormulaCells(true);
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            text.append(shown.formatCellValue(cell)).append('\n');
          }
        }
      }
      workbook.getAllNames().forEach(name -> text.append(name.getNameName()).append('\n'));
    }
    return text.toString();
  }

  private static String pdf(Quote quote) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    QuotePdf.write(quote, SampleQuotes.QUILLBACK, Paper.LETTER, bytes);
    try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
