package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.words.ItemWords;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import java.util.Optional;

/** A new quote with what is changed in it by hand before it is kept. */
public final class NewQuote {
  private NewQuote() {}

  /**
   * The quote of a draft, amended where anything is to be different.
   *
   * @throws hosewright.problem.BadInputException naming every change that cannot be made
   */
  public static Quote of(Books open, QuoteMaker.Draft draft, PriceList prices, Changes changes) {
    QuoteMaker maker = new QuoteMaker(open.catalogue(), open.terms());
    Quote plain = maker.make(draft, prices);
    if (changes.equals(Changes.NONE)) {
      return plain;
    }
    return maker.make(
        new QuoteMaker.Draft(
            draft.name(),
            draft.customer(),
            draft.date(),
            draft.basis(),
            new Amending(plain, draft.amendments(), ItemWords.in(open, Optional.empty()))
                .after(changes),
            draft.madeAt()),
        prices);
  }
}
