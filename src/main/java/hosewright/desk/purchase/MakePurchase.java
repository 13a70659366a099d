package hosewright.desk.purchase;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.interview.Asker;
import hosewright.desk.quote.Changes;
import hosewright.desk.quote.NewQuote;
import hosewright.line.model.LinePlan;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Plans several jobs and parts lists together and keeps them as one numbered quote. */
public final class MakePurchase {
  private final Supplier<Books> books;
  private final Optional<Asker> asker;

  /**
   * @param asker asked where words could mean several items; empty in a script
   */
  public MakePurchase(Supplier<Books> books, Optional<Asker> asker) {
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
      AskedPurchase purchase,
      Optional<Papers> papers,
      Optional<String> termsFile,
      Changes changes,
      String by) {

    /** Of a quote as its plans and the price list give it. */
    public Request(
        AskedPurchase purchase, Optional<Papers> papers, Optional<String> termsFile, String by) {
      this(purchase, papers, termsFile, Changes.NONE, by);
    }
  }

  /**
   * What came of it.
   *
   * @param quote empty where one of its jobs has no safe plan
   * @param stuck the job that has none
   * @param mightBeLess by so much at most the goods of the jobs could be cheaper still
   * @param told what its jobs share of things there are only so many of
   * @param files papers written
   */
  public record Made(
      Optional<Quote> quote,
      Optional<Stuck> stuck,
      Optional<Money> mightBeLess,
      List<String> told,
      List<String> files) {}

  /** A job without a safe plan. */
  public record Stuck(String title, LinePlan plan) {}

  /**
   * The quote, kept with its papers.
   *
   * @throws hosewright.problem.BadInputException naming everything that cannot be used; nothing is
   *     kept then
   */
  public Made make(Request asked) {
    try (Books open = books.get()) {
      PurchaseGroups groups =
          PurchaseGroups.of(asked.purchase(), Dealer.of(open, asker), open.today());
      Optional<Stuck> stuck = groups.planned().stuck();
      if (stuck.isPresent()) {
        return new Made(Optional.empty(), stuck, Optional.empty(), List.of(), List.of());
      }
      Quote quote =
          new NewQuote(
                  groups.customer(),
                  groups.date(),
                  Basis.of(groups.title(), Optional.empty(), groups.groups()),
                  Amendments.NONE.withLines(groups.freeLines()),
                  asked.changes(),
                  asked.papers(),
                  asked.by())
              .keep(open, asked.termsFile());
      List<String> files =
          asked.papers().map(p -> p.write(quote, Papers.dealer(open.terms()))).orElse(List.of());
      return new Made(
          Optional.of(quote),
          Optional.empty(),
          groups.planned().mightBeLess(quote),
          groups.planned().told(),
          files);
    }
  }
}
