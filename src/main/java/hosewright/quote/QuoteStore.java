package hosewright.quote;

import hosewright.problem.BadInputException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where quotes are kept. What is kept is never rewritten: a change is a new revision beside the old
 * one, and only a quote's status moves.
 */
public interface QuoteStore {

  /**
   * Numbers a new quote and keeps it, in one step: every number is used once and none is left out,
   * whoever asks at the same time. When {@code withNumber} throws, the number is free again.
   *
   * @param withNumber makes the quote, revision 1, that carries the number given
   * @return the quote as kept
   */
  Quote saveNew(Function<String, Quote> withNumber);

  /**
   * Keeps a further revision of a quote.
   *
   * @param next the quote with its number and the revision after the latest one kept
   * @throws BadInputException when somebody else has kept that revision already, or the number is
   *     not on file
   */
  Quote saveRevision(Quote next);

  /**
   * Moves the latest revision of a quote from one status to another.
   *
   * @param seen the quote as the caller knows it
   * @return the quote with its new status
   * @throws BadInputException when it is no longer the latest revision or in that status
   */
  Quote changeStatus(Quote seen, Quote.Status next);

  /** The latest revision of a quote. */
  Optional<Quote> find(String number);

  Optional<Quote> find(String number, int revision);

  /** Every revision of a quote, first to last. */
  List<QuoteHeading> revisions(String number);

  /** The latest revision of every quote, newest number first. */
  List<QuoteHeading> list();
}
