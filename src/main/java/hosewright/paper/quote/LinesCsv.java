package hosewright.paper.quote;

import hosewright.paper.sheet.Cells;
import hosewright.quote.OfferedLine;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The lines of a quote as comma-separated values (RFC 4180, UTF-8).
 *
 * <p>Lines beside the total follow with how they stand; their amounts are not in it. Text that a
 * spreadsheet would run as a formula has an apostrophe set before it.
 */
public final class LinesCsv {
  private static final List<String> COLUMNS =
      List.of(
          "quote",
          "revision",
          "line",
          "item",
          "description",
          "quantity",
          "unit",
          "unitCode",
          "currency",
          "listPrice",
          "unitPrice",
          "extended",
          "taxable",
          "weightLb",
          "note",
          "standing");

  /** Where a quote has several groups; a quote of one keeps the columns it always had. */
  private static final List<String> OF_GROUPS = List.of("group", "groupTitle");

  private LinesCsv() {}

  /** Writes a heading row and a row for each line. The stream stays open. */
  public static void write(Quote quote, OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
    printer.printRecord(
        Stream.concat(COLUMNS.stream(), grouped(quote) ? OF_GROUPS.stream() : Stream.empty()));
    for (QuoteLine line : quote.lines()) {
      print(printer, quote, line, "in the total");
    }
    for (OfferedLine offer : quote.offer().offered()) {
      print(printer, quote, offer.line(), offer.words());
    }
    printer.flush();
  }

  private static void print(CSVPrinter printer, Quote quote, QuoteLine line, String standing)
      throws IOException {
    List<Object> cells = new ArrayList<>();
    Collections.addAll(
        cells,
        Cells.inCsv(quote.number()),
        quote.revision(),
        line.position(),
        Cells.inCsv(line.goods().item()),
        Cells.inCsv(line.goods().description()),
        line.quantity(),
        Cells.inCsv(line.goods().unit()),
        Cells.inCsv(line.goods().unitCode()),
        line.price().extended().getCurrencyUnit().getCode(),
        line.price().listPrice().getAmount().toPlainString(),
        line.price().unitPrice().getAmount().toPlainString(),
        line.price().extended().getAmount().toPlainString(),
        line.goods().taxable() ? "yes" : "no",
        line.goods().weightLb(),
        Cells.inCsv(line.note().orElse("")),
        standing);
    if (grouped(quote)) {
      cells.add(line.group());
      cells.add(Cells.inCsv(quote.basis().group(line.group()).title()));
    }
    printer.printRecord(cells);
  }

  private static boolean grouped(Quote quote) {
    return quote.groups().size() > 1;
  }
}
