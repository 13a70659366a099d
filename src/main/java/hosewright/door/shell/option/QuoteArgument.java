package hosewright.door.shell.option;

import hosewright.desk.Books;
import hosewright.desk.quote.OfferQuotes;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.OptionSpec;
import java.util.List;
import java.util.function.Supplier;

/** How commands take the name of a quote, completed from the books as it is typed. */
public final class QuoteArgument {
  private QuoteArgument() {}

  public static ArgumentSpec of(Supplier<Books> books) {
    return of(books, "NUMBER", "the quote's number, such as Q-000001");
  }

  public static ArgumentSpec of(Supplier<Books> books, String placeholder, String meaning) {
    return ArgumentSpec.required(placeholder, meaning).completing(() -> numbers(books));
  }

  /** What completion offers. */
  public static List<String> numbers(Supplier<Books> books) {
    return new OfferQuotes(books).numbers();
  }

  public static OptionSpec revision() {
    return OptionSpec.value("revision", "N", "which revision").withDefaultSaid("the latest");
  }
}
