package hosewright.quote.life;

import static hosewright.quote.Quote.Status.ACCEPTED;
import static hosewright.quote.Quote.Status.DECLINED;
import static hosewright.quote.Quote.Status.DISCARDED;
import static hosewright.quote.Quote.Status.DRAFT;
import static hosewright.quote.Quote.Status.EXPIRED;
import static hosewright.quote.Quote.Status.ISSUED;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.quote.Quote;
import hosewright.quote.Quote.Status;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which step may be taken with a quote in which state, and where it leads. */
public final class QuoteLife {
  private static final Map<Status, Map<Step, Result>> TABLE =
      Map.of(
          DRAFT,
          Map.of(
              Step.REVISE, Result.newRevision(DRAFT),
              Step.UPDATE_PRICES, Result.newRevision(DRAFT),
              Step.ISSUE, Result.moves(ISSUED),
              Step.DISCARD, Result.moves(DISCARDED)),
          ISSUED,
          Map.of(
              Step.REVISE, Result.newRevision(ISSUED),
              Step.UPDATE_PRICES, Result.newRevision(ISSUED),
              Step.ACCEPT, Result.moves(ACCEPTED),
              Step.DECLINE, Result.moves(DECLINED),
              Step.EXPIRE, Result.moves(EXPIRED)),
          ACCEPTED,
          Map.of(
              Step.REOPEN, Result.newRevision(ACCEPTED),
              Step.ORDER, Result.moves(ACCEPTED)),
          DECLINED,
          Map.of(Step.REOPEN, Result.newRevision(DECLINED)),
          EXPIRED,
          Map.of(
              Step.REOPEN, Result.newRevision(EXPIRED),
              Step.UPDATE_PRICES, Result.newRevision(EXPIRED)),
          DISCARDED,
          Map.of());

  private QuoteLife() {}

  /** What is done with a quote. */
  public enum Step {
    MAKE("made"),
    COPY("copied"),
    REVISE("revised"),
    UPDATE_PRICES("prices updated"),
    REOPEN("reopened"),
    ISSUE("issued"),
    ACCEPT("accepted"),
    DECLINE("declined"),
    EXPIRE("expired"),
    ORDER("ordered"),
    CANCEL_ORDER("order cancelled"),
    CANCEL_LINES("order lines cancelled"),
    DISCARD("discarded");

    private final String done;

    Step(String done) {
      this.done = done;
    }

    /** What has happened once the step is taken. */
    public String done() {
      return done;
    }

    /** As the command is written: {@code update-prices}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * Where a step leads.
   *
   * @param status the state this revision is in afterwards
   * @param newRevision whether a draft of the next revision is made beside it
   */
  public record Result(Status status, boolean newRevision) {
    static Result moves(Status to) {
      return new Result(to, false);
    }

    static Result newRevision(Status stays) {
      return new Result(stays, true);
    }
  }

  /** Where the step leads; empty when it may not be taken. */
  public static Optional<Result> after(Status status, Step step) {
    return Optional.ofNullable(TABLE.get(status).get(step));
  }

  /**
   * Where the step leads.
   *
   * @throws BadInputException naming what may be done instead
   */
  public static Result take(Quote quote, Step step) {
    return after(quote.status(), step).orElseThrow(() -> forbidden(quote, step));
  }

  private static ConflictException forbidden(Quote quote, Step step) {
    String state = "is " + (quote.status() == DRAFT ? "a draft" : word(quote.status()));
    return ConflictException.stateForbids(
        "quote",
        quote.number() + "-r" + quote.revision(),
        state,
        before(quote.status(), step)
            .map(first -> first.word() + " it first")
            .orElseGet(() -> "what can be done is " + possible(quote.status())));
  }

  /** What a person does on the way to a step that may not be taken yet; empty where none leads. */
  private static Optional<Step> before(Status status, Step step) {
    return TABLE.get(status).entrySet().stream()
        .filter(one -> !one.getValue().newRevision() && one.getValue().status() != status)
        .filter(one -> one.getKey() != Step.EXPIRE)
        .filter(one -> leads(one.getValue().status(), step))
        .map(Map.Entry::getKey)
        .min(Comparator.naturalOrder());
  }

  private static boolean leads(Status status, Step step) {
    return after(status, step).isPresent() || before(status, step).isPresent();
  }

  /** The state as a person reads it. */
  public static String word(Status status) {
    return status.name().toLowerCase(Locale.ROOT);
  }

  private static String possible(Status status) {
    List<Step> steps =
        Arrays.stream(Step.values()).filter(step -> after(status, step).isPresent()).toList();
    return Stream.concat(
            steps.stream().filter(step -> step != Step.EXPIRE).map(Step::word), Stream.of("copy"))
        .collect(Collectors.joining(", "));
  }
}
