package hosewright.quote;

import hosewright.line.model.Bill;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.LinePrices.Priced;
import hosewright.quote.QuoteLine.Break;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Writes the lines of a quote, group by group: what each plan needs, then what was added by hand.
 *
 * <p>A price break is reached by all of an item that the total has, whichever group it is for. What
 * is offered beside the total is priced as if it were taken: at what the total has and its own.
 */
final class LineWriter {
  private final List<Group> groups;
  private final Amendments amendments;
  private final LinePrices prices;
  private final Map<String, Integer> inTotal = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  LineWriter(List<Group> groups, Amendments amendments, LinePrices prices) {
    this.groups = groups;
    this.amendments = amendments;
    this.prices = prices;
  }

  /** What becomes a line once it is priced. */
  private record Wanted(
      int group,
      Optional<String> item,
      Optional<Priced> free,
      int quantity,
      Optional<String> note) {

    String key() {
      return Group.key(group, item.or(() -> free.map(Priced::description)).orElse(""));
    }
  }

  /**
   * The lines that make the total.
   *
   * @throws BadInputException naming every item that has no price
   */
  List<QuoteLine> lines() {
    List<Wanted> wanted =
        groups.stream().filter(group -> !group.optional()).flatMap(this::wanted).toList();
    wanted.forEach(
        one -> one.item().ifPresent(item -> inTotal.merge(item, one.quantity(), Integer::sum)));
    List<QuoteLine> lines = new ArrayList<>();
    for (Wanted one : wanted) {
      int inAll = one.item().map(inTotal::get).orElse(one.quantity());
      line(lines.size() + 1, one, inAll).ifPresent(lines::add);
    }
    throwAny();
    return lines;
  }

  /** The lines beside the total, numbered on from those in it. */
  List<OfferedLine> offered(List<QuoteLine> lines) {
    List<OfferedLine> offered = new ArrayList<>();
    for (ExtraLine extra : amendments.extraLines()) {
      if (extra.standing() != Inclusion.INCLUDED) {
        Optional<Integer> insteadOf =
            extra.insteadOf().flatMap(key -> positions(lines, key).findFirst());
        offer(lines.size() + offered.size() + 1, wanted(extra))
            .ifPresent(line -> offered.add(new OfferedLine(extra.standing(), insteadOf, line)));
      }
    }
    for (Group group : groups) {
      if (group.optional()) {
        optional(group, lines.size(), offered);
      }
    }
    throwAny();
    return offered;
  }

  private void optional(Group group, int before, List<OfferedLine> offered) {
    for (Wanted one : wanted(group).toList()) {
      offer(before + offered.size() + 1, one)
          .ifPresent(
              line -> offered.add(new OfferedLine(Inclusion.OPTIONAL, Optional.empty(), line)));
    }
  }

  private Optional<QuoteLine> offer(int position, Wanted one) {
    int besides = one.item().map(item -> inTotal.getOrDefault(item, 0)).orElse(0);
    return line(position, one, besides + one.quantity());
  }

  private static Stream<Integer> positions(List<QuoteLine> lines, String key) {
    return lines.stream().filter(line -> line.key().equals(key)).map(QuoteLine::position);
  }

  private Stream<Wanted> wanted(Group group) {
    Stream<Wanted> planned =
        group.plan().items().stream()
            .filter(bought -> bought.unitPrice().isPresent())
            .map(bought -> wanted(group, bought))
            .filter(one -> one.quantity() > 0);
    Stream<Wanted> added =
        amendments.extraLines().stream()
            .filter(extra -> extra.standing() == Inclusion.INCLUDED)
            .filter(extra -> extra.group() == group.number())
            .map(LineWriter::wanted);
    List<String> order = amendments.byHand().order();
    return Stream.concat(planned, added)
        .sorted(
            Comparator.comparingInt(
                one -> order.contains(one.key()) ? order.indexOf(one.key()) : order.size()));
  }

  private Wanted wanted(Group group, Bill.Item bought) {
    int planned = bought.quantity() * group.count();
    int quantity =
        amendments.quantities().getOrDefault(Group.key(group.number(), bought.item()), planned);
    return new Wanted(
        group.number(),
        Optional.of(bought.item()),
        Optional.empty(),
        quantity,
        spareNote(planned, bought.spare() * group.count(), quantity));
  }

  private static Wanted wanted(ExtraLine extra) {
    Optional<Priced> free =
        extra
            .unitPrice()
            .filter(price -> extra.item().isEmpty())
            .map(
                price ->
                    new Priced(
                        extra.description(),
                        "each",
                        "EA",
                        0,
                        price,
                        price,
                        List.of(new Break(1, price))));
    return new Wanted(extra.group(), extra.item(), free, extra.quantity(), Optional.empty());
  }

  /**
   * The line at its price.
   *
   * @param inAll of its item, which decides the price break
   */
  private Optional<QuoteLine> line(int position, Wanted one, int inAll) {
    Optional<Priced> priced = one.free().or(() -> prices.of(one.item().orElseThrow(), inAll));
    if (priced.isEmpty()) {
      problems.add(
          Problem.of(
              "item",
              one.item().orElse(""),
              "an item of the catalogue with a price in force on the day"));
    }
    return priced.map(found -> line(position, one, found));
  }

  private QuoteLine line(int position, Wanted one, Priced priced) {
    QuoteLine.Goods goods =
        new QuoteLine.Goods(
            one.item().orElse(""),
            priced.description(),
            priced.unit(),
            priced.unitCode(),
            priced.eachLb() * one.quantity(),
            true);
    Optional<Discount> discount =
        Optional.ofNullable(amendments.discounts().get(Group.key(one.group(), goods.key())));
    Optional<Money> agreed =
        Optional.ofNullable(amendments.byHand().prices().get(goods.key()))
            .map(ByHand.SetPrice::price);
    Money before = agreed.orElse(priced.unitPrice());
    Money unitPrice = discount.map(less -> less.off(before)).orElse(before);
    return new QuoteLine(
        position,
        one.group(),
        goods,
        one.quantity(),
        new QuoteLine.Price(
            priced.listPrice(),
            unitPrice,
            unitPrice.multipliedBy(one.quantity()),
            priced.breaks(),
            discount,
            agreed),
        together(
            together(one.note(), discount.map(Discount::words)),
            Optional.ofNullable(amendments.byHand().remarks().get(one.key()))));
  }

  private static Optional<String> together(Optional<String> first, Optional<String> second) {
    return first.isPresent() && second.isPresent()
        ? Optional.of(first.get() + "; " + second.get())
        : first.or(() -> second);
  }

  private static Optional<String> spareNote(int planned, int spare, int quantity) {
    int needed = planned - spare;
    if (quantity < needed) {
      return Optional.of("the plan needs " + needed);
    }
    return spare == 0 || quantity != planned
        ? Optional.empty()
        : Optional.of(spare + " spare: the price break makes more cost less");
  }

  private void throwAny() {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
