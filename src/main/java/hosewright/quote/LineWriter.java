package hosewright.quote;

import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.LinePrices.Priced;
import hosewright.quote.Quote.Break;
import hosewright.quote.Quote.OfferedLine;
import hosewright.quote.Quote.QuoteLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/** Writes the lines of a quote: what the plan needs, then what was added by hand. */
final class LineWriter {
  private final Amendments amendments;
  private final LinePrices prices;

  LineWriter(Amendments amendments, LinePrices prices) {
    this.amendments = amendments;
    this.prices = prices;
  }

  /**
   * The lines that make the total.
   *
   * @throws BadInputException naming every item that has no price
   */
  List<QuoteLine> lines(LinePlan plan) {
    List<QuoteLine> lines = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Bill.Item bought : plan.items()) {
      if (bought.unitPrice().isPresent()) {
        int quantity = amendments.quantities().getOrDefault(bought.item(), bought.quantity());
        if (quantity > 0) {
          priced(lines.size() + 1, bought.item(), quantity, spareNote(bought, quantity), problems)
              .ifPresent(lines::add);
        }
      }
    }
    for (ExtraLine extra : amendments.extraLines()) {
      if (extra.standing() == Inclusion.INCLUDED) {
        extra(lines.size() + 1, extra, problems).ifPresent(lines::add);
      }
    }
    throwAny(problems);
    return lines;
  }

  /** The lines beside the total, numbered on from those in it. */
  List<OfferedLine> offered(List<QuoteLine> lines) {
    List<OfferedLine> offered = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (ExtraLine extra : amendments.extraLines()) {
      if (extra.standing() != Inclusion.INCLUDED) {
        int position = lines.size() + offered.size() + 1;
        Optional<Integer> insteadOf =
            extra.insteadOf().flatMap(key -> positions(lines, key).findFirst());
        extra(position, extra, problems)
            .ifPresent(line -> offered.add(new OfferedLine(extra.standing(), insteadOf, line)));
      }
    }
    throwAny(problems);
    return offered;
  }

  private static Stream<Integer> positions(List<QuoteLine> lines, String key) {
    return lines.stream().filter(line -> line.key().equals(key)).map(QuoteLine::position);
  }

  private Optional<QuoteLine> extra(int position, ExtraLine extra, List<Problem> problems) {
    if (extra.item().isPresent()) {
      return priced(position, extra.item().get(), extra.quantity(), Optional.empty(), problems);
    }
    Money price = extra.unitPrice().orElseThrow();
    Priced free =
        new Priced(
            extra.description(), "each", "EA", 0, price, price, List.of(new Break(1, price)));
    return Optional.of(line(position, "", extra.quantity(), free, Optional.empty()));
  }

  private Optional<QuoteLine> priced(
      int position, String item, int quantity, Optional<String> note, List<Problem> problems) {
    Optional<Priced> priced = prices.of(item, quantity);
    if (priced.isEmpty()) {
      problems.add(
          Problem.of("item", item, "an item of the catalogue with a price in force on the day"));
    }
    return priced.map(found -> line(position, item, quantity, found, note));
  }

  private QuoteLine line(
      int position, String item, int quantity, Priced priced, Optional<String> note) {
    QuoteLine.Goods goods =
        new QuoteLine.Goods(
            item,
            priced.description(),
            priced.unit(),
            priced.unitCode(),
            priced.eachLb() * quantity,
            true);
    Optional<Discount> discount = Optional.ofNullable(amendments.discounts().get(goods.key()));
    Money unitPrice = discount.map(less -> less.off(priced.unitPrice())).orElse(priced.unitPrice());
    return new QuoteLine(
        position,
        goods,
        quantity,
        new QuoteLine.Price(
            priced.listPrice(),
            unitPrice,
            unitPrice.multipliedBy(quantity),
            priced.breaks(),
            discount),
        together(note, discount.map(Discount::words)));
  }

  private static Optional<String> together(Optional<String> first, Optional<String> second) {
    return first.isPresent() && second.isPresent()
        ? Optional.of(first.get() + "; " + second.get())
        : first.or(() -> second);
  }

  private static Optional<String> spareNote(Bill.Item bought, int quantity) {
    int needed = bought.quantity() - bought.spare();
    if (quantity < needed) {
      return Optional.of("the plan needs " + needed);
    }
    return bought.spare() == 0 || quantity != bought.quantity()
        ? Optional.empty()
        : Optional.of(bought.spare() + " spare: the price break makes more cost less");
  }

  private static void throwAny(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
