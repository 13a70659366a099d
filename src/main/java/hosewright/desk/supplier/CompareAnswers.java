package hosewright.desk.supplier;

import hosewright.desk.Books;
import hosewright.desk.Signing;
import hosewright.desk.quote.QuoteChoice;
import hosewright.order.Comparison;
import hosewright.order.RequestForPrice;
import hosewright.order.SupplierAnswer;
import hosewright.quote.Quote;
import hosewright.quote.terms.Rates;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;

/** Sets suppliers' answers side by side and notes whose is taken. */
public final class CompareAnswers {
  private final Supplier<Books> books;

  public CompareAnswers(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param files names of sheets that suppliers filled in
   * @param choice whose answers are taken and what foreign money is worth
   * @param by who takes them
   */
  public record Request(String number, List<String> files, Choice choice, String by) {
    public Request {
      files = List.copyOf(files);
    }
  }

  /**
   * Whose answers are taken: the cheapest landed where nothing else is said.
   *
   * @param rates what one of a foreign currency is in the quote's; as the rates on record have it
   *     on the day where it is not said
   * @param suppliers codes of those taken instead, by line
   * @param reason why others are taken than the cheapest
   */
  public record Choice(
      Map<CurrencyUnit, BigDecimal> rates,
      Map<Integer, String> suppliers,
      Optional<String> reason) {}

  /** The answers side by side, for the dealer's eyes. */
  public record Compared(String number, Comparison comparison) {}

  /**
   * The answers on file and in the sheets, compared and kept.
   *
   * @throws hosewright.problem.BadInputException naming every cell that cannot be used; nothing is
   *     kept then
   */
  public Compared compare(Request asked) {
    Choice choice = asked.choice();
    try (Books open = books.get()) {
      Quote quote = QuoteChoice.named(asked.number(), open.quotes());
      List<RequestForPrice> wanted = RequestForPrice.of(quote);
      List<SupplierAnswer> answers =
          new AnswerFiles(quote.number(), wanted, open.shelf().suppliers())
              .read(asked.files(), open.orders().answers(quote.number()));
      Comparison comparison =
          Comparison.of(
              wanted,
              answers,
              quote.total().getCurrencyUnit(),
              rates(open, answers, quote, choice.rates()),
              choice.suppliers(),
              choice.reason());
      open.orders()
          .keepAnswers(quote.number(), comparison.answers(), Signing.actor(asked.by(), open.now()));
      return new Compared(quote.number(), comparison);
    }
  }

  private static Map<CurrencyUnit, BigDecimal> rates(
      Books open, List<SupplierAnswer> answers, Quote quote, Map<CurrencyUnit, BigDecimal> said) {
    Rates onRecord = open.rates().load();
    Map<CurrencyUnit, BigDecimal> rates = new HashMap<>(said);
    answers.stream()
        .map(SupplierAnswer::currency)
        .distinct()
        .forEach(
            foreign ->
                onRecord
                    .of(foreign, quote.total().getCurrencyUnit(), open.today())
                    .ifPresent(rate -> rates.putIfAbsent(foreign, rate)));
    return rates;
  }
}
