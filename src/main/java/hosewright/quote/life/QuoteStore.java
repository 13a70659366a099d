package hosewright.quote.life;

import hosewright.problem.BadInputException;
import hosewright.quote.Quote;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where quotes are kept. What is kept is never rewritten: a change is a new revision beside the old
 * one, and only a quote's status moves, with what is promised on issuing it. Every step is logged
 * with who and when, in the same transaction.
 */
public interface QuoteStore {

  /** A step with the revision it was taken on. */
  record Logged(String number, int revision, Signed step) {}

  /**
   * Numbers a new quote and keeps it, in one step: every number is used once and none is left out,
   * whoever asks at the same time. When {@code withNumber} throws, the number is free again.
   *
   * @param withNumber makes the quote, revision 1, that carries the number given
   * @return the quote as kept
   */
  Quote saveNew(Function<String, Quote> withNumber, Signed signed);

  /**
   * Keeps a further revision of a quote.
   *
   * @param seen the latest revision as the caller knows it
   * @param next the quote with its number and the revision after that
   * @throws BadInputException when somebody else has kept that revision already, or moved the one
   *     seen to another status, or the number is not on file
   */
  Quote saveRevision(Quote seen, Quote next, Signed signed);

  /**
   * Moves the latest revision of a quote from one status to another.
   *
   * @param seen the quote as the caller knows it
   * @return the quote with its new status
   * @throws BadInputException when it is no longer the latest revision or in that status
   */
  Quote changeStatus(Quote seen, Quote.Status next, Signed signed);

  /**
   * Accepts an issued revision. Newer drafts, which nobody outside has seen, are discarded.
   *
   * @param seen the revision as the caller knows it
   * @return the quote, accepted
   * @throws hosewright.problem.ConflictException when it is no longer issued, or a newer revision
   *     went out
   */
  Quote accept(Quote seen, Signed signed);

  /**
   * Issues the latest revision with what is promised.
   *
   * @param validUntil last day it can be accepted
   * @param leadDays calendar days from a firm order
   * @throws BadInputException as {@link #changeStatus}
   */
  Quote issue(Quote seen, LocalDate validUntil, int leadDays, Signed signed);

  /**
   * Expires every issued quote whose last day is before this one, for good: a clock set back does
   * not bring them back.
   *
   * @return how many
   */
  int expireBefore(LocalDate day);

  /**
   * When something was last made of the quote with the highest number; empty where there is none.
   */
  Optional<Instant> lastMade();

  /** The latest revision of a quote. */
  Optional<Quote> find(String number);

  Optional<Quote> find(String number, int revision);

  /**
   * The first revision of every quote made for a row of a tender's file, by number.
   *
   * @param sha256 first digits of the digest of the file, in hexadecimal
   */
  List<Quote> ofTender(String sha256);

  /** The latest revision of every quote, newest number first. */
  List<QuoteHeading> list();

  /** Every step taken with a quote, in order. */
  List<Logged> steps(String number);
}
