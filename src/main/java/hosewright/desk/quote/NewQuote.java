package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Revising;
import hosewright.desk.Signing;
import hosewright.desk.words.ItemWords;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.terms.Customer;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A new quote, kept with what is changed in it by hand.
 *
 * @param date the day its prices are of
 * @param amendments lines beside those of its plans
 * @param changes what is to be different from what plans and price list give
 * @param papers to be written at once
 * @param by who makes it
 */
public record NewQuote(
    Customer customer,
    LocalDate date,
    Basis basis,
    Amendments amendments,
    Changes changes,
    Optional<Papers> papers,
    String by) {

  /**
   * The quote under a number of its own. Prices of a contract that has lapsed by its day are told.
   *
   * @param termsFile name of a text file of terms of sale; the dealer's own without it
   * @throws BadInputException where its day lies too far ahead, a change cannot be made, or the
   *     papers have no place to go to; nothing is kept then
   */
  public Quote keep(Books open, Optional<String> termsFile) {
    notTooFarAhead(open);
    Amendments withTerms = Revising.withTerms(termsFile, open, amendments);
    Quote kept =
        open.quotes()
            .saveNew(
                number -> {
                  papers.ifPresent(all -> all.places(number, 1));
                  return made(open, new Quote.Name(number, 1), withTerms);
                },
                Signing.as(by, Step.MAKE, open.now(), ""));
    LapsedPrices.tell(open, kept);
    return kept;
  }

  /** A quote dated ahead holds from its day on; prices of a far day nobody can promise. */
  private void notTooFarAhead(Books open) {
    LocalDate last = open.today().plusDays(IssueQuote.LONGEST_DAYS);
    if (date.isAfter(last)) {
      throw new BadInputException("date", date.toString(), "a day up to " + last);
    }
  }

  private Quote made(Books open, Quote.Name name, Amendments all) {
    QuoteMaker maker = new QuoteMaker(open.catalogue(), open.terms());
    PriceList prices = new PriceList(open.catalogue(), customer, date);
    Quote plain = maker.make(draft(open, name, all), prices);
    if (changes.equals(Changes.NONE)) {
      return plain;
    }
    Amendments changed =
        new Amending(plain, all, ItemWords.in(open, Optional.empty())).after(changes);
    return maker.make(draft(open, name, changed), prices);
  }

  private QuoteMaker.Draft draft(Books open, Quote.Name name, Amendments all) {
    return new QuoteMaker.Draft(name, customer, date, basis, all, open.now());
  }
}
