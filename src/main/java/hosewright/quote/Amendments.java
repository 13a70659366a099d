package hosewright.quote;

import hosewright.line.model.Bill;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What people changed about a quote by hand, beside what its plan and the price list say.
 *
 * @param reason why this revision was made; empty for the first
 * @param quantities quantities set by hand, by line key; 0 leaves the line out
 * @param discounts discounts on lines, by line key
 * @param extraLines lines beside those the plan needs
 * @param notes sentences for this buyer
 * @param terms the dealer's terms of sale as they stood
 * @param byHand prices, order, words and shipping set by hand; none in documents kept before there
 *     were any
 */
public record Amendments(
    String reason,
    Map<String, Integer> quantities,
    Map<String, Discount> discounts,
    List<ExtraLine> extraLines,
    List<String> notes,
    List<String> terms,
    ByHand byHand) {

  public static final Amendments NONE =
      new Amendments("", Map.of(), Map.of(), List.of(), List.of(), List.of(), ByHand.NONE);

  public Amendments {
    quantities = Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
    discounts = Collections.unmodifiableMap(new LinkedHashMap<>(discounts));
    extraLines = List.copyOf(extraLines);
    notes = List.copyOf(notes);
    terms = List.copyOf(terms);
    byHand = byHand == null ? ByHand.NONE : byHand;
  }

  /**
   * How the goods go, where it is not as the customer's terms have it.
   *
   * @param freight charged in place of what the terms say
   * @param shipTo the place of the dealer's tax table they go to; empty for the customer's own
   */
  public record Shipping(Optional<Money> freight, Optional<String> shipTo) {
    public static final Shipping USUAL = new Shipping(Optional.empty(), Optional.empty());

    /** Documents kept before there was the one or the other lack it. */
    public Shipping {
      freight = freight == null ? Optional.empty() : freight;
      shipTo = shipTo == null ? Optional.empty() : shipTo;
    }
  }

  /** With freight set by hand; empty for what the terms say. */
  public Amendments withFreight(Optional<Money> freight) {
    return shipped(new Shipping(freight, shipping().shipTo()));
  }

  /** Shipped to a place of the tax table; empty for the customer's own. */
  public Amendments shippedTo(Optional<String> place) {
    return shipped(new Shipping(shipping().freight(), place));
  }

  private Amendments shipped(Shipping other) {
    return with(byHand.shipped(other));
  }

  /** How the goods go. */
  public Shipping shipping() {
    return byHand.shipping();
  }

  /** With other prices, order and words. */
  public Amendments with(ByHand set) {
    return new Amendments(reason, quantities, discounts, extraLines, notes, terms, set);
  }

  public Amendments because(String why) {
    return new Amendments(why, quantities, discounts, extraLines, notes, terms, byHand);
  }

  public Amendments withTerms(List<String> sentences) {
    return new Amendments(reason, quantities, discounts, extraLines, notes, sentences, byHand);
  }

  public Amendments withNotes(List<String> sentences) {
    return new Amendments(reason, quantities, discounts, extraLines, sentences, terms, byHand);
  }

  /** With a line's quantity set by hand; one that was added changes its own. */
  public Amendments withQuantity(String key, int quantity) {
    boolean added = extraLines.stream().anyMatch(line -> line.key().equals(key));
    if (added) {
      return withLines(
          extraLines.stream()
              .filter(line -> quantity > 0 || !line.key().equals(key))
              .map(line -> line.key().equals(key) ? line.times(quantity) : line)
              .toList());
    }
    Map<String, Integer> set = new LinkedHashMap<>(quantities);
    set.put(key, quantity);
    return new Amendments(reason, set, discounts, extraLines, notes, terms, byHand);
  }

  /**
   * With the quantities that still fit another plan: one set by hand is forgotten where the plan
   * now needs another number than the one it was set against.
   */
  public Amendments fitting(List<Group> before, List<Group> after) {
    Map<String, Integer> needed = needed(after);
    Map<String, Integer> set = new LinkedHashMap<>(quantities);
    needed(before)
        .forEach(
            (line, count) -> {
              if (!count.equals(needed.get(line))) {
                set.remove(line);
              }
            });
    return new Amendments(reason, set, discounts, extraLines, notes, terms, byHand);
  }

  private static Map<String, Integer> needed(List<Group> groups) {
    Map<String, Integer> needed = new LinkedHashMap<>();
    for (Group group : groups) {
      for (Bill.Item item : group.plan().items()) {
        needed.merge(
            Group.key(group.number(), item.item()), item.quantity() * group.count(), Integer::sum);
      }
    }
    return needed;
  }

  public Amendments withDiscount(String key, Discount discount) {
    Map<String, Discount> set = new LinkedHashMap<>(discounts);
    set.put(key, discount);
    return new Amendments(reason, quantities, set, extraLines, notes, terms, byHand);
  }

  public Amendments withoutDiscount(String key) {
    Map<String, Discount> set = new LinkedHashMap<>(discounts);
    set.remove(key);
    return new Amendments(reason, quantities, set, extraLines, notes, terms, byHand);
  }

  public Amendments withLine(ExtraLine line) {
    List<ExtraLine> lines = new ArrayList<>(extraLines);
    lines.add(line);
    return withLines(lines);
  }

  public Amendments withoutLine(String key) {
    return withLines(extraLines.stream().filter(line -> !line.key().equals(key)).toList());
  }

  /** With an offered line taken into the total; an alternate puts out the line it replaces. */
  public Amendments taking(String key) {
    Amendments taken =
        withLines(
            extraLines.stream()
                .map(line -> line.key().equals(key) ? line.as(ExtraLine.Inclusion.INCLUDED) : line)
                .toList());
    return extraLines.stream()
        .filter(line -> line.key().equals(key))
        .flatMap(line -> line.insteadOf().stream())
        .findFirst()
        .map(replaced -> taken.withQuantity(replaced, 0))
        .orElse(taken);
  }

  /** With these lines beside those the plan needs. */
  public Amendments withLines(List<ExtraLine> lines) {
    return new Amendments(reason, quantities, discounts, lines, notes, terms, byHand);
  }
}
