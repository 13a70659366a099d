package hosewright.command;

import hosewright.jobfile.JobFile;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.Invocation;

/** What every command that makes a further revision does when it is made: keep it and show it. */
final class Revising {
  private Revising() {}

  /**
   * What came of it.
   *
   * @param quote the new revision
   * @param diff from the revision before
   */
  record Revised(Quote quote, QuoteDiff diff) {}

  /** Keeps the new revision, if the step may be taken, and answers with the difference. */
  static Answer keep(Invocation in, Books books, Quote seen, Quote next, Step step) {
    QuoteLife.take(seen, step);
    String why = next.amendments().reason();
    Quote kept = books.quotes().saveRevision(seen, next, Signing.as(in, step, books.now(), why));
    QuoteDiff diff = diff(seen, kept);
    return Answer.of(
        new Revised(kept, diff),
        screen -> QuoteText.of(kept, screen) + "\n\n" + DiffText.of(diff, screen));
  }

  static QuoteDiff diff(Quote before, Quote after) {
    return QuoteDiff.between(
        before, JobFile.parse(before.jobYaml()), after, JobFile.parse(after.jobYaml()));
  }

  /** The terms of sale of a new revision: a file named, else the dealer's, else as before. */
  static Amendments withTerms(Invocation in, Books books, Amendments amendments) {
    if (in.value("terms").isPresent()) {
      return amendments.withTerms(TextLines.read("terms", in.value("terms").get()));
    }
    var current = books.termsOfSale();
    return current.isEmpty() ? amendments : amendments.withTerms(current);
  }
}
