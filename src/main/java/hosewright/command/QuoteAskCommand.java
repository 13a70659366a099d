package hosewright.command;

import hosewright.catalogue.Supplier;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.order.Asked;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import hosewright.report.AskSheet;
import hosewright.report.Export;
import hosewright.report.Paper;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes sheets that ask suppliers for the price of what a quote has none for. */
final class QuoteAskCommand extends ShellCommand {
  private final java.util.function.Supplier<Books> books;

  QuoteAskCommand(java.util.function.Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote ask",
                Group.QUOTE,
                "Writes sheets that ask suppliers for prices a quote has none for",
                "quote ask Q-000003 --supplier COUPL --supplier BRASS")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("supplier", "CODE", "whom to ask; one sheet each")
                    .asRequired()
                    .asRepeatable()
                    .completing(() -> codes(books)))
            .with(PaperOptions.options()));
    this.books = books;
  }

  record AskedFor(String number, List<Asked> asked, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    Paper paper = PaperOptions.paper(in);
    Path folder = PaperOptions.folder(in);
    List<AskSheet> sheets = new ArrayList<>();
    List<Asked> asked;
    Quote quote;
    try (Books open = books.get()) {
      quote = QuoteChoice.named(in.argument(0).orElseThrow(), open.quotes());
      asked = Asked.of(quote);
      if (asked.isEmpty()) {
        throw new BadInputException(
            "number", quote.number(), "a quote with something still to be sourced");
      }
      List<AskSheet.Row> rows =
          asked.stream()
              .map(one -> new AskSheet.Row(one.line(), one.wanted(), one.quantity()))
              .toList();
      String dealer = Papers.dealer(open.terms()).name();
      for (Supplier supplier : suppliers(in, open)) {
        sheets.add(new AskSheet(quote.number(), supplier.code(), supplier.name(), dealer, rows));
      }
    }
    List<String> files = write(sheets, folder, paper, in.flag("overwrite"));
    return Answer.of(new AskedFor(quote.number(), asked, files), PaperOptions.said(files));
  }

  private static List<String> write(
      List<AskSheet> sheets, Path folder, Paper paper, boolean overwrite) {
    List<Export> places = new ArrayList<>();
    for (AskSheet sheet : sheets) {
      String stem = sheet.number() + "-ask-" + sheet.supplier();
      places.add(Export.to(folder, stem + ".xlsx", overwrite));
      places.add(Export.to(folder, stem + ".csv", overwrite));
    }
    List<String> files = new ArrayList<>();
    try {
      for (int i = 0; i < sheets.size(); i++) {
        AskSheet sheet = sheets.get(i);
        files.add(places.get(2 * i).write(out -> sheet.writeWorkbook(paper, out)).toString());
        files.add(places.get(2 * i + 1).write(sheet::writeCsv).toString());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static List<Supplier> suppliers(Invocation in, Books open) {
    List<Supplier> all = open.shelf().suppliers();
    List<String> codes = all.stream().map(Supplier::code).toList();
    List<Supplier> chosen = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String typed : in.values("supplier").stream().distinct().toList()) {
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

  private static List<String> codes(java.util.function.Supplier<Books> books) {
    try (Books open = books.get()) {
      return open.shelf().suppliers().stream().map(Supplier::code).toList();
    }
  }
}
