package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.Given;
import hosewright.quote.Margin;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.life.Signed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Issues a quote: from then on it is what the buyer holds in hand, and never changes. */
public final class IssueQuote {
  /** The longest a quote may hold, or a firm order take. */
  public static final int LONGEST_DAYS = 3650;

  private static final int LONGEST_NAME = 100;

  /** Lines named whose cost is not known. */
  private static final int MOST_REASONS = 3;

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
   * @param unknownMargin who says yes to a margin that nobody can work out; empty where nobody did
   * @param papers to be written at once
   * @param by who issues it
   */
  public record Request(
      String number,
      Validity validity,
      OptionalInt leadDays,
      boolean belowFloor,
      Optional<String> unknownMargin,
      Optional<Papers> papers,
      String by) {

    /** One that nobody says yes to where its margin is not known. */
    public Request(
        String number,
        Validity validity,
        OptionalInt leadDays,
        boolean belowFloor,
        Optional<Papers> papers,
        String by) {
      this(number, validity, leadDays, belowFloor, Optional.empty(), papers, by);
    }
  }

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
            "valid-until",
            until.get().toString(),
            "say this or " + Given.as("valid-days") + ", not both");
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
      if (seen.lines().isEmpty()) {
        throw ConflictException.stateForbids(
            "quote", seen.name().words(), "has no lines", "'quote revise' adds some");
      }
      LocalDate validUntil = validUntil(asked.validity(), seen, open);
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
    Margin margin = Costs.earnings(open, quote).all();
    Margin.Floor standing = margin.against(Costs.floor(open, quote));
    if (standing == Margin.Floor.BELOW && !asked.belowFloor()) {
      throw new BadInputException(
          "quote",
          quote.number() + "-r" + quote.revision(),
          "it earns less than the floor for "
              + quote.customer().pricing().customerClass()
              + " customers; see 'quote show --internal', or say "
              + Given.as("allow-below-floor"));
    }
    if (standing == Margin.Floor.UNKNOWN) {
      String who =
          asked
              .unknownMargin()
              .map(name -> Signing.text("unknown-margin-by", name, LONGEST_NAME))
              .orElseThrow(() -> unknown(quote, margin));
      return Signing.as(asked.by(), Step.ISSUE, open.now(), who + " said yes").at(standing);
    }
    return step.at(standing);
  }

  private static BadInputException unknown(Quote quote, Margin margin) {
    List<String> why = margin.unknownBecause();
    String some =
        String.join("; ", why.subList(0, Math.min(why.size(), MOST_REASONS)))
            + (why.size() > MOST_REASONS ? " ..." : "");
    return new BadInputException(
        "quote",
        quote.name().words(),
        "issued while some cost is not known ("
            + some
            + "), so that nobody can tell whether the margin floor is kept; see 'quote"
            + " show --internal', or name who says yes with "
            + Given.as("unknown-margin-by")
            + " NAME");
  }

  /** A quote dated ahead holds from its own day on. */
  private static LocalDate validUntil(Validity asked, Quote quote, Books open) {
    LocalDate today = open.today();
    LocalDate from = quote.validity().date().isAfter(today) ? quote.validity().date() : today;
    if (asked.until().isEmpty()) {
      return from.plusDays(
          asked.days().isPresent()
              ? asked.days().getAsInt()
              : QuoteMaker.validityDays(open.terms()));
    }
    LocalDate last = asked.until().get();
    if (last.isBefore(from) || !last.isBefore(from.plusDays(LONGEST_DAYS))) {
      throw new BadInputException(
          "valid-until",
          last.toString(),
          "a day from %s on, written year-month-day"
              .formatted(from.equals(today) ? "today" : from + ", the day of the quote,"));
    }
    return last;
  }
}
