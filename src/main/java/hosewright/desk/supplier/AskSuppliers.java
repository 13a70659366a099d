package hosewright.desk.supplier;

import hosewright.catalogue.Supplier;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.quote.QuoteChoice;
import hosewright.order.RequestForPrice;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.paper.quote.AskSheet;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes sheets that ask suppliers for the price of what a quote has none for. */
public final class AskSuppliers {
  private final java.util.function.Supplier<Books> books;

  public AskSuppliers(java.util.function.Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param suppliers codes of those to ask
   * @param folder where their sheets go
   * @param overwrite whether sheets that are there already may be replaced
   */
  public record Request(
      String number, List<String> suppliers, Paper paper, Path folder, boolean overwrite) {
    public Request {
      suppliers = List.copyOf(suppliers);
    }
  }

  /** The parts asked for and the sheets that ask. */
  public record AskedFor(String number, List<RequestForPrice> asked, List<String> files) {}

  /**
   * The sheets, a workbook and a text for each supplier.
   *
   * @throws BadInputException when nothing is to be sourced, a supplier is not known, or a sheet
   *     has no place to go to; nothing is written then
   */
  public AskedFor ask(Request request) {
    List<AskSheet> sheets = new ArrayList<>();
    List<RequestForPrice> asked;
    Quote quote;
    try (Books open = books.get()) {
      quote = QuoteChoice.named(request.number(), open.quotes());
      asked = RequestForPrice.of(quote);
      if (asked.isEmpty()) {
        throw new BadInputException(
            "number", quote.number(), "a quote with something still to be sourced");
      }
      List<AskSheet.Row> rows =
          asked.stream()
              .map(one -> new AskSheet.Row(one.line(), one.wanted(), one.quantity()))
              .toList();
      String dealer = Papers.dealer(open.terms()).name();
      for (Supplier supplier : chosen(request.suppliers(), open.shelf().suppliers())) {
        sheets.add(new AskSheet(quote.number(), supplier.code(), supplier.name(), dealer, rows));
      }
    }
    return new AskedFor(quote.number(), asked, write(sheets, request));
  }

  private static List<String> write(List<AskSheet> sheets, Request request) {
    List<Export> places = new ArrayList<>();
    for (AskSheet sheet : sheets) {
      String stem = sheet.number() + "-ask-" + sheet.supplier();
      places.add(Export.to(request.folder(), stem + ".xlsx", request.overwrite()));
      places.add(Export.to(request.folder(), stem + ".csv", request.overwrite()));
    }
    List<String> files = new ArrayList<>();
    try {
      for (int i = 0; i < sheets.size(); i++) {
        AskSheet sheet = sheets.get(i);
        files.add(
            places.get(2 * i).write(out -> sheet.writeWorkbook(request.paper(), out)).toString());
        files.add(places.get(2 * i + 1).write(sheet::writeCsv).toString());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static List<Supplier> chosen(List<String> wanted, List<Supplier> all) {
    List<String> codes = all.stream().map(Supplier::code).toList();
    List<Supplier> chosen = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String typed : wanted.stream().distinct().toList()) {
      all.stream()
          .filter(supplier -> supplier.code().equalsIgnoreCase(typed.strip()))
          .findFirst()
          .ifPresentOrElse(
              chosen::add,
              () ->
                  problems.add(
                      new Problem(
                          "supplier",
                          typed,
                          "one of " + String.join(", ", codes),
                          Nearest.to(typed, codes))));
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return chosen;
  }
}
