package hosewright.paper.page;

import hosewright.paper.quote.PlannedQuotes;
import hosewright.paper.quote.QuoteWorkbook;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.quote.Totals;
import hosewright.quote.terms.Dealer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.joda.money.Money;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the workbook of a quote of 2,000 lines takes, first in a fresh program and then warm.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 4)
@Fork(value = 1, jvmArgs = "-Xmx256m")
public class QuoteExportBenchmark {
  private static final int LINES = 2_000;
  private static final Dealer DEALER =
      new Dealer("Quillback Hose & Coupling", List.of(), "", "", "");

  private Quote quote;

  /** Makes the quote. */
  @Setup
  public void draw() {
    quote = grown(PlannedQuotes.all().get(0), LINES);
  }

  /** Gives the size of the file, so that nothing can be left out. */
  @Benchmark
  public int two_thousand_lines() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    QuoteWorkbook.write(quote, DEALER, Paper.LETTER, out);
    return out.size();
  }

  /** The quote with its lines over and over, up to so many. */
  static Quote grown(Quote quote, int count) {
    List<QuoteLine> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      QuoteLine like = quote.lines().get(i % quote.lines().size());
      lines.add(new QuoteLine(i + 1, like.goods(), like.quantity(), like.price(), like.note()));
    }
    Money subtotal =
        lines.stream()
            .map(line -> line.price().extended())
            .reduce(Money.zero(quote.total().getCurrencyUnit()), Money::plus);
    Money taxable =
        quote.totals().charging().freightTaxed()
            ? subtotal.plus(quote.totals().freight())
            : subtotal;
    Money tax = taxable.multipliedBy(quote.totals().charging().taxRate(), RoundingMode.HALF_UP);
    return new Quote(
        quote.name(),
        quote.status(),
        quote.customer(),
        quote.validity(),
        new Basis(quote.basis().title(), quote.basis().jobYaml(), quote.plan(), Optional.empty()),
        new Quote.Offer(lines, quote.offer().offered(), quote.offer().amendments()),
        new Totals(
            subtotal,
            quote.totals().freight(),
            tax,
            subtotal.plus(quote.totals().freight()).plus(tax),
            quote.totals().charging()));
  }
}
