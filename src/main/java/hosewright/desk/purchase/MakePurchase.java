package hosewright.desk.purchase;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.desk.TextLines;
import hosewright.desk.interview.Asker;
import hosewright.desk.quote.Changes;
import hosewright.desk.quote.NewQuote;
import hosewright.line.model.LinePlan;
import hosewright.quote.Amendments;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.Customer;
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
   * @param files papers written
   */
  public record Made(
      Optional<Quote> quote,
      Optional<Stuck> stuck,
      Optional<Money> mightBeLess,
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
      PurchaseGroups groups = PurchaseGroups.of(asked.purchase(), open, asker);
      Optional<Stuck> stuck = groups.stuck();
      if (stuck.isPresent()) {
        return new Made(Optional.empty(), stuck, Optional.empty(), List.of());
      }
      Quote quote = keep(open, asked, groups);
      List<String> files =
          asked.papers().map(p -> p.write(quote, Papers.dealer(open.terms()))).orElse(List.of());
      return new Made(Optional.of(quote), Optional.empty(), groups.mightBeLess(quote), files);
    }
  }

  /** Nothing is kept where the papers asked for have no place to go to. */
  private static Quote keep(Books open, Request asked, PurchaseGroups groups) {
    Customer customer = groups.customer();
    Amendments terms =
        Amendments.NONE.withTerms(
            asked
                .termsFile()
                .map(file -> TextLines.read("terms", file))
                .orElseGet(open::termsOfSale));
    Amendments amendments =
        groups.freeLines().stream().reduce(terms, Amendments::withLine, (one, other) -> other);
    PriceList prices = new PriceList(open.catalogue(), customer, groups.date());
    return open.quotes()
        .saveNew(
            number -> {
              asked.papers().ifPresent(all -> all.places(number, 1));
              return NewQuote.of(
                  open,
                  new QuoteMaker.Draft(
                      new Quote.Name(number, 1),
                      customer,
                      groups.date(),
                      Quote.Basis.of(groups.title(), Optional.empty(), groups.groups()),
                      amendments,
                      open.now()),
                  prices,
                  asked.changes());
            },
            Signing.as(asked.by(), Step.MAKE, open.now(), ""));
  }
}
