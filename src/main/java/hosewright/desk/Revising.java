package hosewright.desk;

import hosewright.intake.JobText;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import java.util.List;
import java.util.Optional;

/** What everybody who makes a further revision does when it is made: keep it and compare it. */
public final class Revising {
  private Revising() {}

  /**
   * What came of it.
   *
   * @param quote the new revision
   * @param diff from the revision before
   */
  public record Revised(Quote quote, QuoteDiff diff) {}

  /**
   * Keeps the new revision, if the step may be taken.
   *
   * @param by who takes it
   */
  public static Revised keep(Books books, Quote seen, Quote next, Step step, String by) {
    QuoteLife.take(seen, step);
    String why = next.offer().amendments().reason();
    Quote kept = books.quotes().saveRevision(seen, next, Signing.as(by, step, books.now(), why));
    return new Revised(kept, diff(seen, kept));
  }

  public static QuoteDiff diff(Quote before, Quote after) {
    return QuoteDiff.between(
        before,
        JobText.kept(before.basis().jobYaml()).words(),
        after,
        JobText.kept(after.basis().jobYaml()).words());
  }

  /**
   * The terms of sale of a new revision: a file named, else the dealer's, else as before.
   *
   * @param file the name of a text file of terms, one sentence a line
   */
  public static Amendments withTerms(Optional<String> file, Books books, Amendments amendments) {
    if (file.isPresent()) {
      return amendments.withTerms(TextLines.read("terms", file.get()));
    }
    List<String> current = books.termsOfSale();
    return current.isEmpty() ? amendments : amendments.withTerms(current);
  }
}
