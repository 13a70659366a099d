package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.problem.ConflictException;
import hosewright.problem.NoSuchThingException;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.life.QuoteStore;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A quote by the name somebody gives it: by number, and by revision where it is not the latest. */
public final class QuoteChoice {
  private static final Pattern WRITTEN =
      Pattern.compile("(?:[Qq]-?)?0*(\\d{1,9}?)(?:[-.][rR](\\d{1,6}))?");

  private QuoteChoice() {}

  /**
   * The quote named.
   *
   * @param revision empty for the latest
   * @throws NoSuchThingException when there is no such quote or revision
   */
  static Quote of(String number, Optional<String> revision, Books books) {
    Quote quote = named(number, books.quotes());
    return revision.isEmpty() ? quote : revision(quote, revision.get(), books.quotes());
  }

  /** The quote somebody wrote as {@code Q-000001}, {@code 1} or, with its revision, Q-000001-r2. */
  public static Quote named(String typed, QuoteStore quotes) {
    Matcher written = WRITTEN.matcher(typed.strip());
    String number =
        written.matches() ? canonical(written.group(1)) : typed.strip().toUpperCase(Locale.ROOT);
    Quote latest = quotes.find(number).orElseThrow(() -> unknown(typed.strip(), numbers(quotes)));
    return written.matches() && written.group(2) != null
        ? revision(latest, written.group(2), quotes)
        : latest;
  }

  /**
   * The latest revision of the quote named, which is the only one a step may be taken on.
   *
   * @throws ConflictException when an earlier one was named
   */
  public static Quote latest(String number, Books books) {
    Quote named = named(number, books.quotes());
    Quote latest = books.quotes().find(named.number()).orElseThrow();
    if (named.revision() != latest.revision()) {
      throw ConflictException.stateForbids(
          "quote",
          named.number() + "-r" + named.revision(),
          "stays as it is, since it is not the latest revision",
          "take " + named.number() + "-r" + latest.revision());
    }
    return latest;
  }

  private static Quote revision(Quote latest, String revision, QuoteStore quotes) {
    return Optional.of(revision)
        .filter(text -> text.matches("[1-9][0-9]{0,5}"))
        .flatMap(text -> quotes.find(latest.number(), Integer.parseInt(text)))
        .orElseThrow(
            () ->
                new NoSuchThingException(
                    "revision",
                    revision,
                    List.of(),
                    latest.number() + " has revisions 1 to " + latest.revision()));
  }

  private static String canonical(String digits) {
    return String.format(Locale.ROOT, "Q-%06d", Integer.parseInt(digits));
  }

  private static NoSuchThingException unknown(String number, List<String> known) {
    String next =
        known.isEmpty() ? "none is made yet, 'quote make' makes one" : "'quote list' shows all";
    return new NoSuchThingException("quote", number, known, next);
  }

  /** The numbers of all quotes. */
  static List<String> numbers(QuoteStore quotes) {
    return quotes.list().stream().map(QuoteHeading::number).toList();
  }
}
