package hosewright.paper.quote;

import hosewright.paper.sheet.Look;
import hosewright.paper.sheet.Page;
import hosewright.quote.Quote;
import java.util.List;

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

  void write() {
    PrintedTerms.sections(quote).forEach(this::section);
    signature();
  }

  private void section(String heading, List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    page.gap(8);
    page.next();
    page.span(FIRST, LAST, heading, Look.SECTION);
    for (String sentence : sentences) {
      page.next();
      page.text(FIRST, "\u2022", Look.CENTRE).span(FIRST + 1, LAST, sentence, Look.TEXT);
    }
  }

  private void signature() {
    page.gap(14);
    page.next();
    page.span(FIRST, LAST, "Accepted for " + quote.customer().name(), Look.STRONG);
    page.gap(26);
    page.next();
    page.span(0, 2, "", Look.SIGN).span(4, LAST, "", Look.SIGN);
    page.next();
    page.span(0, 2, "Name and authority", Look.SMALL)
        .span(4, LAST, "Signature and date", Look.SMALL);
  }
}
