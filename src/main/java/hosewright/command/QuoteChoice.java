package hosewright.command;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.Quote;
import hosewright.quote.QuoteHeading;
import hosewright.quote.QuoteStore;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;

/** How commands name a quote: by number, and by revision where it is not the latest. */
final class QuoteChoice {
  private QuoteChoice() {}

  static ArgumentSpec argument(ObjectProvider<Books> books) {
    return ArgumentSpec.required("NUMBER", "the quote's number, such as Q-000001")
        .completing(
            () -> {
              try (Books open = books.getObject()) {
                return numbers(open.quotes());
              }
            });
  }

  static OptionSpec revision() {
    return OptionSpec.value("revision", "N", "which revision").withDefaultSaid("the latest");
  }

  /**
   * The quote named.
   *
   * @throws BadInputException when there is no such quote or revision
   */
  static Quote of(Invocation in, Books books) {
    QuoteStore quotes = books.quotes();
    String number = in.argument(0).orElseThrow().toUpperCase(Locale.ROOT);
    Optional<Quote> latest = quotes.find(number);
    if (latest.isEmpty()) {
      throw unknown(number, numbers(quotes));
    }
    Optional<String> revision = in.value("revision");
    if (revision.isEmpty()) {
      return latest.get();
    }
    int last = latest.get().revision();
    return Optional.of(revision.get())
        .filter(text -> text.matches("[1-9][0-9]{0,5}"))
        .flatMap(text -> quotes.find(number, Integer.parseInt(text)))
        .orElseThrow(
            () ->
                new BadInputException(
                    "revision", revision.get(), number + " has revisions 1 to " + last));
  }

  private static BadInputException unknown(String number, List<String> known) {
    String allowed =
        known.isEmpty() ? "there are no quotes yet: quote make" : "the number of a quote on file";
    return new BadInputException(
        List.of(new Problem("number", number, allowed, Nearest.to(number, known))));
  }

  private static List<String> numbers(QuoteStore quotes) {
    return quotes.list().stream().map(QuoteHeading::number).toList();
  }
}
