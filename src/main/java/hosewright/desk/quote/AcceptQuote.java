package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.problem.ConflictException;
import hosewright.problem.Given;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.Signed;
import java.util.Optional;
import java.util.function.Supplier;

/** Notes that a buyer took a quote; an order can then be raised from it. */
public final class AcceptQuote {
  private final Supplier<Books> books;

  public AcceptQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param number a quote
   * @param revision the offer the buyer took; the latest without it
   * @param note what was agreed, for example the number of the buyer's order
   * @param by who notes it
   */
  public record Request(
      String number, Optional<String> revision, Optional<String> note, String by) {}

  /** The latest revision, accepted. */
  public Moved accept(String number, Optional<String> note, String by) {
    return accept(new Request(number, Optional.empty(), note, by));
  }

  /**
   * The quote, accepted; drafts made after the offer are discarded.
   *
   * @throws hosewright.problem.BadInputException when the quote's state forbids it
   */
  public Moved accept(Request asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.of(asked.number(), asked.revision(), open);
      offered(seen, open);
      String why = asked.note().map(text -> Signing.sentence("note", text)).orElse("");
      Signed signed = Signing.as(asked.by(), Step.ACCEPT, open.now(), why);
      Quote accepted = open.quotes().accept(seen, signed);
      return new Moved(accepted.number(), accepted.revision(), accepted.status(), signed.by(), why);
    }
  }

  /** Of a draft that stands beside a live offer, the offer is named. */
  private static void offered(Quote seen, Books open) {
    if (seen.status() == Quote.Status.DRAFT) {
      for (int earlier = seen.revision() - 1; earlier > 0; earlier--) {
        Optional<Quote> offer = open.quotes().find(seen.number(), earlier);
        if (offer.filter(one -> one.status() == Quote.Status.ISSUED).isPresent()) {
          throw ConflictException.stateForbids(
              "quote",
              seen.name().words(),
              "is a draft that the buyer has not seen",
              Given.as("revision") + " " + earlier + " accepts the offer that stands");
        }
      }
    }
    QuoteLife.take(seen, Step.ACCEPT);
  }
}
