package hosewright.paper.quote;

import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Map;

/** What stands below the totals of the first sheet: terms, cautions and the place to sign. */
final class QuoteTerms {
  private static final int FIRST = 0;
  private static final int LAST = 7;

  private final Page page;
  private final Quote quote;

  QuoteTerms(Page page, Quote quote) {
    this.page = page;
    this.quote = quote;
  }

  /** No printed page begins with the place to sign: what was agreed to stands above it. */
  void write() {
    Map<String, List<String>> sections = PrintedTerms.sections(quote);
    List<String> cautions = sections.get(PrintedTerms.CAUTIONS);
    List<String> last = cautions.subList(Math.max(1, cautions.size() - 2), cautions.size());
    sections.forEach(
        (heading, sentences) ->
            section(
                heading,
                heading.equals(PrintedTerms.CAUTIONS)
                    ? sentences.subList(0, sentences.size() - last.size())
                    : sentences));
    page.together(
        () -> {
          last.forEach(this::sentence);
          signature();
        });
  }

  /** A heading stands with its first sentence. */
  private void section(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    page.together(
        () -> {
          page.gap(6);
          page.next();
          page.span(FIRST, LAST, heading, Look.SECTION);
          sentence(sentences.get(0));
        });
    sentences.stream().skip(1).forEach(this::sentence);
  }

  private void sentence(String sentence) {
    page.next();
    page.text(FIRST, "\u2022", Look.SMALL_CENTRE).span(FIRST + 1, LAST, sentence, Look.NOTE);
  }

  private void signature() {
    page.gap(10);
    page.next();
    page.span(FIRST, LAST, "Accepted for " + quote.customer().name(), Look.STRONG);
    page.gap(24);
    page.next();
    page.span(0, 2, "", Look.SIGN).span(4, LAST, "", Look.SIGN);
    page.next();
    page.span(0, 2, "Name and authority", Look.SMALL)
        .span(4, LAST, "Signature and date", Look.SMALL);
  }
}
