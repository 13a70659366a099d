package hosewright.desk.kit;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.NetPrice;
import hosewright.desk.Refusals;
import hosewright.desk.kit.KitPart.Laid;
import hosewright.desk.words.WantedLine;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** Parts wanted besides what is laid: the item each one means, and how it is counted. */
public final class CountedParts {
  private static final String FIELD = "parts";

  private final List<Part> parts;

  private CountedParts(List<Part> parts) {
    this.parts = parts;
  }

  private record Part(ExtraLine line, KitPart counted) {}

  /**
   * Reads parts as a seller writes them. Words are looked up once, however often hose is laid anew.
   *
   * @param refusals told everything that cannot be used
   */
  public static CountedParts read(List<String> texts, WantedLine wanted, Refusals refusals) {
    List<Part> parts = new ArrayList<>();
    for (String text : texts) {
      refusals
          .read(
              () -> {
                KitPart counted = KitPart.of(text);
                return new Part(
                    wanted.read(FIELD, counted.text(), Inclusion.INCLUDED, Optional.empty()),
                    counted);
              })
          .ifPresent(parts::add);
    }
    return new CountedParts(List.copyOf(parts));
  }

  /** How many of each item go with what is laid. */
  public Map<String, Integer> items(Laid laid) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Part part : parts) {
      int count = part.line().quantity() * part.counted().times(laid);
      part.line()
          .item()
          .filter(item -> count > 0)
          .ifPresent(item -> counts.merge(item, count, Integer::sum));
    }
    return counts;
  }

  /**
   * Lines in free text, at their own prices, for one of a group.
   *
   * @param group number of the group they belong to
   * @param count how often the group is bought
   */
  public List<ExtraLine> free(Laid laid, int group, int count) {
    return parts.stream()
        .filter(part -> part.line().item().isEmpty() && part.counted().times(laid) > 0)
        .map(part -> part.line().in(group, part.counted().times(laid) * count))
        .toList();
  }

  /**
   * A plan that can be laid with the parts among its goods. What it was weighed against is left
   * out, which was priced without them.
   *
   * @throws BadInputException naming every part without a price
   */
  public LinePlan into(LinePlan plan, Catalogue catalogue, NetPrice prices) {
    Map<String, Integer> counts = items(Laid.NOTHING.and(plan, 1));
    if (!plan.feasible() || counts.isEmpty()) {
      return plan;
    }
    Refusals refusals = new Refusals();
    Map<String, Bill.Item> bought = new LinkedHashMap<>();
    plan.items().forEach(item -> bought.put(item.item(), item));
    counts.forEach(
        (number, count) ->
            bought.merge(
                number,
                line(catalogue.item(number).orElseThrow(), count, prices, refusals),
                (planned, part) ->
                    line(
                        catalogue.item(number).orElseThrow(),
                        planned.quantity() + part.quantity(),
                        prices,
                        refusals)));
    refusals.throwAny();
    return plan.priced(plan.bill().priced(List.copyOf(bought.values()), plan.bill().date()));
  }

  private static Bill.Item line(Item item, int count, NetPrice prices, Refusals refusals) {
    Optional<Money> price = prices.unitPrice(item, count);
    if (price.isEmpty()) {
      refusals.add(FIELD, item.number(), "an item with a price in force on the day");
    }
    return bought(item, count, price);
  }

  /** So many of an item at a price, as a bill has it. */
  public static Bill.Item bought(Item item, int count, Optional<Money> price) {
    return new Bill.Item(
        item.number(),
        item.description(),
        count,
        0,
        item.unit().word(),
        price,
        item.weightLb() * count);
  }
}
