package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.desk.Stock;
import hosewright.line.StockBridges;
import hosewright.line.StockBridges.Way;
import hosewright.problem.BadInputException;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
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
final class JointBridgeCommand extends ShellCommand {
  private static final int MOST_SHOWN = 9;

  private final Supplier<Books> books;

  JointBridgeCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "joint bridge",
                Group.IDENTIFY,
                "Finds the cheapest adapters between two ends",
                "joint bridge --from \"2 NPT male\" --to \"1.5 NH female swivel\" --show 3")
            .alias("bridge")
            .with(
                OptionSpec.value("from", "END", "the open end, where the water comes from")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("to", "END", "the end it goes into")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("customer", "ID", "whose terms price it")
                    .withDefaultSaid("list prices")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("show", "N", "how many ways to show, 1 to " + MOST_SHOWN)
                    .withDefault("1")));
    this.books = books;
  }

  /**
   * The best bridge, with the names of {@link BridgeDocument}, and what else could be done.
   *
   * @param chain empty when the ends mate as they are, or when nothing in the catalogue does it
   * @param cost null when the catalogue has no bridge
   */
  record Bridged(
      List<BridgeDocument.Step> chain,
      Money cost,
      List<BridgeDocument.Wanted> missing,
      List<BridgeDocument.Joint> joints,
      Boolean removable,
      Double workingPsi,
      List<BridgeDocument> alternatives,
      List<String> notes) {

    static Bridged of(BridgeDocument best, List<BridgeDocument> others, List<String> notes) {
      return new Bridged(
          best.chain(),
          best.missing().isEmpty() ? best.cost() : null,
          best.missing(),
          best.joints(),
          best.removable(),
          best.workingPsi(),
          others,
          notes);
    }
  }

  @Override
  protected Answer answer(Invocation in) {
    Refusals refusals = new Refusals();
    Optional<End> from = refusals.read("from", () -> End.parse(in.required("from")));
    Optional<End> to = refusals.read("to", () -> End.parse(in.required("to")));
    Optional<Integer> show = refusals.read(() -> show(in.required("show")));
    refusals.throwAny();
    return answer(from.orElseThrow(), to.orElseThrow(), show.orElseThrow(), in.value("customer"));
  }

  private static int show(String text) {
    return Optional.of(text.strip())
        .filter(typed -> typed.matches("[1-" + MOST_SHOWN + "]"))
        .map(Integer::valueOf)
        .orElseThrow(
            () -> new BadInputException("show", text, "a whole number from 1 to " + MOST_SHOWN));
  }

  private Answer answer(End from, End to, int show, Optional<String> customer) {
    try (Books open = books.get()) {
      StockBridges stock = Stock.bridges(open, customer);
      boolean asTheyAre = Mating.of(from, to).mates();
      List<BridgeDocument> found =
          stock.cheapest(from, to, asTheyAre ? 1 : show).stream()
              .map(way -> BridgeDocument.of(from, to, asTheyAre ? none(way) : way))
              .toList();
      return found.isEmpty() ? sourced(from, to, stock, show) : stocked(from, to, found, stock);
    }
  }

  private static Way none(Way way) {
    return new Way(List.of(), Money.zero(way.cost().getCurrencyUnit()), List.of(), false);
  }

  private static Answer stocked(End from, End to, List<BridgeDocument> found, StockBridges stock) {
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
    best.permanentJoints().forEach(joint -> notes.add(permanent(joint)));
    best.joints().stream()
        .filter(joint -> !joint.verdict().engagement().isEmpty())
        .forEach(joint -> notes.add("In the hand: " + joint.verdict().engagement() + "."));
    Bridged document = Bridged.of(best, found.subList(1, found.size()), notes);
    return Answer.of(document, screen -> new BridgeText(from, to, screen).stocked(document));
  }

  private static String permanent(BridgeDocument.Joint joint) {
    return joint.upstream()
        + " to "
        + joint.downstream()
        + " is permanent. "
        + joint.verdict().reason();
  }

  private static Answer sourced(End from, End to, StockBridges stock, int show) {
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
      Bridged nothing =
          new Bridged(List.of(), null, List.of(), List.of(), null, null, List.of(), notes);
      return Answer.noSafePlan(
          nothing, screen -> new BridgeText(from, to, screen).sourced(nothing));
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
    Bridged document = Bridged.of(wanted, others, notes);
    return Answer.noSafePlan(
        document, screen -> new BridgeText(from, to, screen).sourced(document));
  }
}
