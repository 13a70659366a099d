package hosewright.paper.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.reading.CatalogueReader;
import hosewright.csv.CsvText;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Discount;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.KeptPrices;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.QuoteLine;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.DealerTerms;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No total ever differs from the sum of the lines that are shown with it. */
final class QuoteTotalsPropertyTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final long SEED = 20261102;

  @Test
  void a_total_is_the_sum_of_its_shown_lines_freight_and_tax() throws IOException {
    hold(SEED, 150);
  }

  @Test
  @Tag("long")
  void the_same_over_many_more_quotes() throws IOException {
    hold(SEED + 1, 20_000);
  }

  private static void hold(long seed, int quotes) throws IOException {
    Random random = new Random(seed);
    Catalogue catalogue = catalogue();
    for (int i = 0; i < quotes; i++) {
      Quote base = SampleQuotes.hydrantLine();
      Quote quote = amended(base, catalogue, random);
      String which = "seed " + seed + ", quote " + i;

      BigDecimal shown = BigDecimal.ZERO;
      for (CSVRecord row : csv(quote)) {
        BigDecimal extended = new BigDecimal(row.get("extended"));
        assertThat(extended)
            .as(which)
            .isEqualByComparingTo(
                new BigDecimal(row.get("unitPrice")).multiply(new BigDecimal(row.get("quantity"))));
        if (row.get("standing").equals("in the total")) {
          shown = shown.add(extended);
        }
      }
      BigDecimal tax =
          shown.multiply(quote.totals().charging().taxRate()).setScale(2, RoundingMode.HALF_UP);
      assertThat(quote.totals().subtotal().getAmount()).as(which).isEqualByComparingTo(shown);
      assertThat(quote.totals().tax().getAmount()).as(which).isEqualByComparingTo(tax);
      assertThat(quote.total().getAmount())
          .as(which)
          .isEqualByComparingTo(shown.add(tax).add(quote.totals().freight().getAmount()));
      for (QuoteLine line : quote.lines()) {
        assertThat(line.netBreaks()).as(which).isNotEmpty();
      }
      differencesAddUp(base, quote, which);
    }
  }

  private static void differencesAddUp(Quote base, Quote quote, String which) {
    QuoteDiff diff = QuoteDiff.between(base, Map.of(), quote, Map.of());
    Money sum = diff.sums().freightDifference().plus(diff.sums().taxDifference());
    for (QuoteDiff.LineChange change : diff.lines()) {
      sum = sum.plus(change.difference());
    }
    assertThat(sum).as(which).isEqualTo(diff.sums().totalDifference());
  }

  /** Quantities, discounts, items and free text in any number. */
  private static Quote amended(Quote base, Catalogue catalogue, Random random) {
    Amendments amendments = Amendments.NONE;
    for (QuoteLine line : base.lines()) {
      if (random.nextInt(3) == 0) {
        amendments = amendments.withQuantity(line.key(), random.nextInt(60));
      }
      if (random.nextInt(3) == 0) {
        amendments = amendments.withDiscount(line.key(), discount(random));
      }
    }
    for (int extra = random.nextInt(8); extra > 0; extra--) {
      Item item = catalogue.items().get(random.nextInt(catalogue.items().size()));
      boolean free = random.nextBoolean();
      boolean priced = catalogue.listPrice(item.number(), 1, DAY).isPresent();
      Inclusion standing = Inclusion.values()[random.nextInt(2)];
      ExtraLine line =
          free || !priced
              ? new ExtraLine(
                  standing,
                  Optional.empty(),
                  "free text " + extra,
                  1 + random.nextInt(500),
                  Optional.of(Money.ofMinor(CurrencyUnit.USD, random.nextInt(100_000))),
                  Optional.empty())
              : new ExtraLine(
                  standing,
                  Optional.of(item.number()),
                  "",
                  1 + random.nextInt(500),
                  Optional.empty(),
                  Optional.empty());
      amendments = amendments.withLine(line).withDiscount(line.key(), discount(random));
    }
    return new QuoteMaker(catalogue, new DealerTerms(List.of(), Map.of()))
        .make(
            new QuoteMaker.Draft(
                new Quote.Name(base.number(), 2),
                base.customer(),
                DAY,
                new Basis(base.basis().title(), base.basis().jobYaml(), base.plan()),
                amendments,
                base.validity().madeAt()),
            new KeptPrices(base, new PriceList(catalogue, base.customer(), DAY)));
  }

  private static Discount discount(Random random) {
    return new Discount(BigDecimal.valueOf(1 + random.nextInt(998), 3), "why not");
  }

  private static List<CSVRecord> csv(Quote quote) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    LinesCsv.write(quote, bytes);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.builder()
            .setReader(new StringReader(bytes.toString(StandardCharsets.UTF_8)))
            .setFormat(format)
            .get()) {
      return parser.getRecords();
    }
  }

  private static Catalogue catalogue() throws IOException {
    Map<String, Reader> files = new LinkedHashMap<>();
    for (String file : CatalogueReader.FILES) {
      files.put(file, Files.newBufferedReader(Path.of("catalogue", file)));
    }
    return CatalogueReader.readTables(CsvText.all(files));
  }
}
