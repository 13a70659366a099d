package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.QuoteMaker;
import hosewright.quote.Signed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Issues a quote: from then on it is what the buyer holds in hand, and never changes. */
public final class IssueQuote {
  /** The longest a quote may hold, or a firm order take. */
  public static final int LONGEST_DAYS = 3650;

  private final Supplier<Books> books;

  public IssueQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param number the latest revision of a quote
   * @param leadDays calendar days from a firm order; without it as stock and suppliers have it
   * @param belowFloor whether it may earn less than the customer's margin floor
   * @param papers to be written at once
   * @param by who issues it
   */
  public record Request(
      String number,
      Validity validity,
      OptionalInt leadDays,
      boolean belowFloor,
      Optional<Papers> papers,
      String by) {}

  /**
   * How long a quote holds: so many days from today, or up to a day; the dealer's usual time where
   * neither is given.
   *
   * @throws BadInputException where both are
   */
  public record Validity(OptionalInt days, Optional<LocalDate> until) {
    public Validity {
      if (days.isPresent() && until.isPresent()) {
        throw new BadInputException(
            "valid-until", until.get().toString(), "say this or --valid-days, not both");
      }
    }
  }

  /**
   * What came of it.
   *
   * @param step the step as it was signed, with how the quote stands to the margin floor
   * @param files papers written
   */
  public record Issued(Quote quote, Signed step, List<String> files) {}

  /**
   * The quote as it is issued, with its papers.
   *
   * @throws BadInputException when its state forbids it, it earns too little, or its papers have no
   *     place to go to; it is not issued then
   */
  public Issued issue(Request asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(asked.number(), open);
      QuoteLife.take(seen, Step.ISSUE);
      LocalDate validUntil = validUntil(asked.validity(), open);
      int leadDays = asked.leadDays().orElseGet(() -> leadDays(open, seen));
      asked.papers().ifPresent(all -> all.places(seen.number(), seen.revision()));
      Signed step = signed(asked, open, seen);
      Quote issued = open.quotes().issue(seen, validUntil, leadDays, step);
      List<String> files =
          asked.papers().map(p -> p.write(issued, Papers.dealer(open.terms()))).orElse(List.of());
      return new Issued(issued, step, files);
    }
  }

  /** As stock and suppliers have it, with what suppliers answered for parts asked of them. */
  private static int leadDays(Books open, Quote quote) {
    List<String> keys = quote.lines().stream().map(line -> line.goods().key()).toList();
    int asked =
        open.orders().answers(quote.number()).stream()
            .filter(answer -> answer.chosen() && keys.contains(answer.wanted()))
            .mapToInt(answer -> answer.offer().leadDays())
            .max()
            .orElse(0);
    return Math.max(asked, quote.validity().leadDays());
  }

  /** The step, marked when it goes out under the floor or nobody can tell. */
  private static Signed signed(Request asked, Books open, Quote quote) {
    Signed step = Signing.as(asked.by(), Step.ISSUE, open.now(), "");
    Margin.Floor standing = Costs.earnings(open, quote).all().against(Costs.floor(open, quote));
    if (standing == Margin.Floor.BELOW && !asked.belowFloor()) {
      throw new BadInputException(
          "quote",
          quote.number() + "-r" + quote.revision(),
          "it earns less than the floor for "
              + quote.customer().pricing().customerClass()
              + " customers; see 'quote show --internal', or say --allow-below-floor");
    }
    return step.at(standing);
  }

  private static LocalDate validUntil(Validity asked, Books open) {
    LocalDate today = open.today();
    if (asked.until().isEmpty()) {
      return today.plusDays(
          asked.days().isPresent()
              ? asked.days().getAsInt()
              : QuoteMaker.validityDays(open.terms()));
    }
    LocalDate last = asked.until().get();
    if (last.isBefore(today) || !last.isBefore(today.plusDays(LONGEST_DAYS))) {
      throw new BadInputException(
          "valid-until", last.toString(), "a day from today on, written year-month-day");
    }
    return last;
  }
}
