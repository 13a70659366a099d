package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.WrittenJob;
import hosewright.intake.JobFile;
import hosewright.job.question.JobField;
import hosewright.quote.Quote;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Quotes as a desk's tests come by them. */
public final class QuotesAtTheDesk {
  private QuotesAtTheDesk() {}

  /** The demo job of a hand line, for a customer. */
  public static Map<JobField, String> handLine(String customer) {
    Map<JobField, String> answers =
        JobFile.read(Path.of("quotes/hydrant-to-nozzle.yaml")).answers();
    answers.put(JobField.CUSTOMER, customer);
    return answers;
  }

  public static MakeQuote.Request request(Map<JobField, String> answers) {
    return new MakeQuote.Request(
        WrittenJob.of(answers), Optional.empty(), Optional.empty(), "ines");
  }

  /** A draft of the hand line for the counter. */
  public static Quote draft(Supplier<Books> books) {
    return new MakeQuote(books).make(request(handLine("COUNTER"))).quote().orElseThrow();
  }

  /** The same, issued for as long as the dealer's quotes usually hold. */
  public static Quote issued(Supplier<Books> books) {
    return issue(books, draft(books).number());
  }

  /** The quote named, issued. */
  public static Quote issue(Supplier<Books> books, String number) {
    return new IssueQuote(books).issue(issue(number)).quote();
  }

  static IssueQuote.Request issue(String number) {
    return new IssueQuote.Request(
        number,
        new IssueQuote.Validity(OptionalInt.empty(), Optional.empty()),
        OptionalInt.empty(),
        true,
        Optional.empty(),
        "ines");
  }
}
