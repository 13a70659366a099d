package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Planning.Planned;
import hosewright.desk.WrittenJob;
import hosewright.desk.interview.Asker;
import hosewright.desk.kit.PlanWithParts;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Plans a job for a customer and keeps the priced plan as a numbered quote. */
public final class MakeQuote {
  private final Supplier<Books> books;
  private final Optional<Asker> asker;

  /** For a script, where nobody can be asked. */
  public MakeQuote(Supplier<Books> books) {
    this(books, Optional.empty());
  }

  /**
   * @param asker asked where words could mean several items; empty in a script
   */
  public MakeQuote(Supplier<Books> books, Optional<Asker> asker) {
    this.books = books;
    this.asker = asker;
  }

  /**
   * What is asked.
   *
   * @param papers to be written at once
   * @param termsFile name of a text file of terms of sale; the dealer's own without it
   * @param changes prices, order and words set by hand
   * @param by who makes it
   */
  public record Request(
      WrittenJob job,
      Optional<Papers> papers,
      Optional<String> termsFile,
      Changes changes,
      String by) {

    /** Of a quote as its plan and the price list give it. */
    public Request(WrittenJob job, Optional<Papers> papers, Optional<String> termsFile, String by) {
      this(job, papers, termsFile, Changes.NONE, by);
    }
  }

  /**
   * What came of it.
   *
   * @param quote empty where there is no safe plan
   * @param files papers written
   */
  public record Made(LinePlan plan, Optional<Quote> quote, List<String> files) {}

  /**
   * The quote, kept with its papers.
   *
   * @throws hosewright.problem.BadInputException when no customer is named and the dealer keeps
   *     none for counter sales, or the papers have no place to go to; nothing is kept then
   */
  public Made make(Request asked) {
    try (Books open = books.get()) {
      PlanWithParts.Planned withParts =
          new PlanWithParts(open, asker).plan(orCounterSale(asked.job(), open));
      Planned planned = withParts.planned();
      if (!planned.plan().feasible()) {
        return new Made(planned.plan(), Optional.empty(), List.of());
      }
      Quote quote =
          new NewQuote(
                  planned.customer().orElseThrow(),
                  planned.date(),
                  new Basis(withParts.job().job().title(), withParts.job().text(), planned.plan()),
                  Amendments.NONE.withLines(withParts.free()),
                  asked.changes(),
                  asked.papers(),
                  asked.by())
              .keep(open, asked.termsFile());
      List<String> files =
          asked.papers().map(p -> p.write(quote, Papers.dealer(open.terms()))).orElse(List.of());
      return new Made(planned.plan(), Optional.of(quote), files);
    }
  }

  /** A job that names no customer is sold over the counter. */
  private static WrittenJob orCounterSale(WrittenJob job, Books open) {
    return job.job().customer().isPresent()
        ? job
        : job.saying(JobField.CUSTOMER, open.customers().counter().id());
  }
}
