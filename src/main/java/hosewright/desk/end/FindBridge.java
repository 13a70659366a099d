package hosewright.desk.end;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.desk.Stock;
import hosewright.line.bridge.StockBridges;
import hosewright.line.bridge.StockBridges.Way;
import hosewright.problem.BadInputException;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.joda.money.Money;

/** Finds the adapters that go between two ends. */
public final class FindBridge {
  /** How many ways somebody may ask for. */
  public static final int MOST_SHOWN = 9;

  private final Supplier<Books> books;

  public FindBridge(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param from the open end in words, where the water comes from
   * @param to the end it goes into
   * @param show how many ways to show, 1 to {@link #MOST_SHOWN}
   * @param customer whose terms price it; empty for list prices
   */
  public record Request(String from, String to, String show, Optional<String> customer) {}

  /**
   * What was found.
   *
   * @param stocked whether the catalogue has it all, or nothing is needed
   */
  public record Found(End from, End to, Bridged bridged, boolean stocked) {}

  /**
   * The bridge.
   *
   * @throws BadInputException naming everything that cannot be used
   */
  public Found find(Request asked) {
    Refusals refusals = new Refusals();
    Optional<End> from = refusals.read("from", () -> End.parse(asked.from()));
    Optional<End> to = refusals.read("to", () -> End.parse(asked.to()));
    Optional<Integer> show = refusals.read(() -> show(asked.show()));
    refusals.throwAny();
    return find(from.orElseThrow(), to.orElseThrow(), show.orElseThrow(), asked.customer());
  }

  private static int show(String text) {
    return Optional.of(text.strip())
        .filter(typed -> typed.matches("[1-" + MOST_SHOWN + "]"))
        .map(Integer::valueOf)
        .orElseThrow(
            () -> new BadInputException("show", text, "a whole number from 1 to " + MOST_SHOWN));
  }

  private Found find(End from, End to, int show, Optional<String> customer) {
    try (Books open = books.get()) {
      StockBridges stock = Stock.bridges(open, customer);
      boolean asTheyAre = Mating.of(from, to).mates();
      List<BridgeDocument> found =
          stock.cheapest(from, to, asTheyAre ? 1 : show).stream()
              .map(way -> BridgeDocument.of(from, to, asTheyAre ? none(way) : way))
              .toList();
      return found.isEmpty()
          ? new Found(from, to, sourced(from, to, stock, show), false)
          : new Found(from, to, stocked(from, to, found, stock), true);
    }
  }

  private static Way none(Way way) {
    return new Way(List.of(), Money.zero(way.cost().getCurrencyUnit()), List.of(), false);
  }

  private static Bridged stocked(End from, End to, List<BridgeDocument> found, StockBridges stock) {
    BridgeDocument best = found.get(0);
    List<String> notes = new ArrayList<>();
    if (best.removable()) {
      notes.add("Every joint comes apart again.");
      stock
          .permanentBelow(best.cost(), from, to)
          .map(way -> BridgeDocument.of(from, to, way))
          .ifPresent(
              way ->
                  notes.add(
                      "With a permanent joint it would cost "
                          + way.cost()
                          + ": "
                          + way.inWords()
                          + "."));
    }
    if (best.neckIn() != null) {
      notes.add(
          "It necks to %s: the catalogue has no chain as wide as the narrower of the two ends."
              .formatted(best.neck()));
    } else {
      stock
          .narrowBelow(best.cost(), from, to)
          .map(way -> BridgeDocument.of(from, to, way))
          .ifPresent(
              way ->
                  notes.add(
                      "Necked to %s it would cost %s: %s."
                          .formatted(way.neck(), way.cost(), way.inWords())));
    }
    best.permanentJoints().forEach(joint -> notes.add(permanent(joint)));
    best.joints().stream()
        .filter(joint -> !joint.verdict().engagement().isEmpty())
        .forEach(joint -> notes.add("In the hand: " + joint.verdict().engagement() + "."));
    return Bridged.of(best, found.subList(1, found.size()), notes);
  }

  private static String permanent(BridgeDocument.Joint joint) {
    return joint.upstream()
        + " to "
        + joint.downstream()
        + " is permanent. "
        + joint.verdict().reason();
  }

  private static Bridged sourced(End from, End to, StockBridges stock, int show) {
    Verdict verdict = Mating.of(from, to);
    List<String> notes = new ArrayList<>();
    if (verdict.outcome() == Verdict.Outcome.MEASURE) {
      notes.add(verdict.reason());
    }
    Optional<Way> way = Mating.sameByName(from, to) ? Optional.empty() : stock.toSource(from, to);
    if (way.isEmpty()) {
      Stream.of(from, to)
          .map(end -> Mating.of(end, end.opposite()))
          .filter(alone -> alone.outcome() == Verdict.Outcome.NO)
          .map(alone -> "Such an end joins nothing. " + alone.reason())
          .forEach(notes::add);
      return Bridged.nothing(notes);
    }
    BridgeDocument wanted = BridgeDocument.of(from, to, way.get());
    wanted.permanentJoints().forEach(joint -> notes.add(permanent(joint)));
    wanted.joints().stream()
        .map(BridgeDocument.Joint::verdict)
        .filter(joint -> joint.outcome() == Verdict.Outcome.MEASURE)
        .map(Verdict::reason)
        .forEach(notes::add);
    List<Way> withStock = stock.withOneSourced(from, to);
    List<BridgeDocument> others =
        (withStock.isEmpty() ? stock.withTwoSourced(from, to) : withStock)
            .stream().limit(show).map(other -> BridgeDocument.of(from, to, other)).toList();
    return Bridged.of(wanted, others, notes);
  }
}
