package hosewright.desk;

import hosewright.paper.json.Json;
import hosewright.paper.page.Export;
import hosewright.paper.page.Paper;
import hosewright.paper.quote.LinesCsv;
import hosewright.paper.quote.PlainSummary;
import hosewright.paper.quote.QuotePdf;
import hosewright.paper.quote.QuoteWorkbook;
import hosewright.paper.shop.ShopWorkbook;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import hosewright.quote.terms.Dealer;
import hosewright.quote.terms.DealerTerms;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The papers of one export: which, on what paper, into which folder.
 *
 * @param kinds kinds of paper, each once
 * @param overwrite whether files that are there already may be replaced
 */
public record Papers(List<String> kinds, Paper paper, Path folder, boolean overwrite) {
  public static final List<String> KINDS =
      List.of("workbook", "pdf", "csv", "json", "summary", "shop");

  private static final Map<String, String> ENDINGS =
      Map.of(
          "workbook",
          ".xlsx",
          "pdf",
          ".pdf",
          "csv",
          ".csv",
          "json",
          ".json",
          "summary",
          ".txt",
          "shop",
          "-shop.xlsx");

  public Papers {
    kinds = List.copyOf(kinds);
  }

  /**
   * The kinds named in a list with commas, each once.
   *
   * @param field what the user calls the list
   * @throws BadInputException for a kind there is none of
   */
  public static List<String> kinds(String field, String text) {
    List<String> kinds = Arrays.stream(text.split(",", -1)).map(Papers::kindCalled).toList();
    for (String kind : kinds) {
      if (!KINDS.contains(kind)) {
        throw new BadInputException(
            List.of(
                new Problem(
                    field,
                    kind,
                    "one or more of " + String.join(", ", KINDS) + ", with commas",
                    Nearest.to(kind, KINDS))));
      }
    }
    return kinds.stream().distinct().toList();
  }

  /** The kind that somebody calls so; a workbook goes by the ending of its file as well. */
  public static String kindCalled(String typed) {
    String kind = typed.strip().toLowerCase(Locale.ROOT);
    return kind.equals("xlsx") ? "workbook" : kind;
  }

  /** The places the papers of a quote go to; claiming them all first, a clash leaves nothing. */
  public List<Export> places(String number, int revision) {
    return kinds.stream()
        .map(kind -> number + "-r" + revision + ENDINGS.get(kind))
        .map(name -> Export.to(folder, name, overwrite))
        .toList();
  }

  /** Writes every paper of a quote and gives the files. */
  public List<String> write(Quote quote, Dealer dealer) {
    List<Export> places = places(quote.number(), quote.revision());
    List<String> files = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      files.add(write(places.get(i), kinds.get(i), quote, dealer).toString());
    }
    return files;
  }

  private Path write(Export place, String kind, Quote quote, Dealer dealer) {
    try {
      return place.write(
          switch (kind) {
            case "workbook" -> out -> QuoteWorkbook.write(quote, dealer, paper, out);
            case "pdf" -> out -> QuotePdf.write(quote, dealer, paper, out);
            case "shop" -> out -> ShopWorkbook.write(quote, dealer, paper, out);
            case "csv" -> out -> LinesCsv.write(quote, out);
            case "json" -> Export.text(Json.write(quote) + "\n");
            default -> Export.text(PlainSummary.text(quote));
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The head of every paper, from the dealer's own settings. */
  public static Dealer dealer(DealerTerms terms) {
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
