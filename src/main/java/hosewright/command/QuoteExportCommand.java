package hosewright.command;

import hosewright.json.Json;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.Dealer;
import hosewright.quote.DealerTerms;
import hosewright.quote.Quote;
import hosewright.report.Export;
import hosewright.report.LinesCsv;
import hosewright.report.Paper;
import hosewright.report.PlainSummary;
import hosewright.report.QuotePdf;
import hosewright.report.QuoteWorkbook;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.beans.factory.ObjectProvider;

/** Writes a quote's papers into a folder. */
final class QuoteExportCommand extends ShellCommand {
  private static final Map<String, String> ENDINGS =
      Map.of("workbook", ".xlsx", "pdf", ".pdf", "csv", ".csv", "json", ".json", "summary", ".txt");
  private static final List<String> KINDS = List.of("workbook", "pdf", "csv", "json", "summary");

  private final ObjectProvider<Books> books;

  QuoteExportCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "quote export",
                Group.QUOTE,
                "Writes a quote as a workbook and other papers",
                "quote export Q-000001 --as workbook,pdf --overwrite")
            .with(QuoteChoice.argument(books))
            .with(
                QuoteChoice.revision(),
                OptionSpec.value("as", "KINDS", "which papers: " + String.join(", ", KINDS))
                    .withDefault("workbook")
                    .completing(KINDS.toArray(String[]::new)),
                OptionSpec.value("out", "FOLDER", "where to put them")
                    .withDefaultSaid("the folder quotes, where there is one, else here")
                    .completingFiles(),
                OptionSpec.value("paper", "SIZE", "letter or a4")
                    .withDefault("letter")
                    .completing("letter", "a4"),
                OptionSpec.flag("overwrite", "replace files that are there already")));
    this.books = books;
  }

  record Exported(String number, int revision, List<String> files) {}

  @Override
  protected Answer answer(Invocation in) {
    List<String> kinds = kinds(in.value("as").orElseThrow());
    Paper paper = paper(in.value("paper").orElseThrow());
    Path folder = folder(in);
    Quote quote;
    Dealer dealer;
    try (Books open = books.getObject()) {
      quote = QuoteChoice.of(in, open);
      dealer = dealer(open.terms());
    }
    String stem = quote.number() + "-r" + quote.revision();
    // Every place is claimed before the first paper is written, so a clash leaves nothing behind.
    List<Export> places =
        kinds.stream()
            .map(kind -> Export.to(folder, stem + ENDINGS.get(kind), in.flag("overwrite")))
            .toList();
    List<String> files = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      files.add(write(places.get(i), kinds.get(i), quote, dealer, paper).toString());
    }
    return Answer.of(
        new Exported(quote.number(), quote.revision(), files),
        "Wrote " + String.join("\nand   ", files));
  }

  private static Path write(Export place, String kind, Quote quote, Dealer dealer, Paper paper) {
    try {
      return place.write(
          out -> {
            switch (kind) {
              case "workbook" -> QuoteWorkbook.write(quote, dealer, paper, out);
              case "pdf" -> QuotePdf.write(quote, dealer, paper, out);
              case "csv" -> LinesCsv.write(quote, out);
              case "json" -> out.write(utf8(Json.write(quote) + "\n"));
              default -> out.write(utf8(PlainSummary.text(quote)));
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> kinds(String text) {
    List<String> kinds =
        Arrays.stream(text.toLowerCase(Locale.ROOT).split(",")).map(String::strip).toList();
    for (String kind : kinds) {
      if (!KINDS.contains(kind)) {
        throw new BadInputException(
            List.of(
                new Problem(
                    "as",
                    kind,
                    "one or more of " + String.join(", ", KINDS) + ", with commas",
                    Nearest.to(kind, KINDS))));
      }
    }
    return kinds.stream().distinct().toList();
  }

  private static Paper paper(String text) {
    return Arrays.stream(Paper.values())
        .filter(paper -> paper.name().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(() -> new BadInputException("paper", text, "letter or a4"));
  }

  private static Path folder(Invocation in) {
    String named =
        in.value("out").orElseGet(() -> Files.isDirectory(Path.of("quotes")) ? "quotes" : ".");
    try {
      return Path.of(named);
    } catch (InvalidPathException e) {
      throw new BadInputException("out", named, "the name of a folder");
    }
  }

  private static Dealer dealer(DealerTerms terms) {
    List<String> address =
        Stream.of("address1", "address2", "address3")
            .flatMap(key -> terms.setting(key).stream())
            .toList();
    return new Dealer(
        terms.setting("name").orElse("Hose dealer"),
        address,
        terms.setting("phone").orElse(""),
        terms.setting("email").orElse(""),
        terms.setting("note").orElse(""));
  }
}
