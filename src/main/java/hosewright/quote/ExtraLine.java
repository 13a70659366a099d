package hosewright.quote;

import java.util.Optional;
import org.joda.money.Money;

/**
 * A line somebody added to what the plan needs.
 *
 * @param item the catalogue item; empty for free text
 * @param description what free text says; empty for an item, whose own description is taken
 * @param unitPrice what one of free text costs; empty for an item, priced as every other line
 * @param insteadOf the {@link QuoteLine#key} of the line an alternate would replace
 * @param group number of the group it belongs to
 */
public record ExtraLine(
    Inclusion standing,
    Optional<String> item,
    String description,
    int quantity,
    Optional<Money> unitPrice,
    Optional<String> insteadOf,
    int group) {

  /** A line of the first group. */
  public ExtraLine(
      Inclusion standing,
      Optional<String> item,
      String description,
      int quantity,
      Optional<Money> unitPrice,
      Optional<String> insteadOf) {
    this(standing, item, description, quantity, unitPrice, insteadOf, Group.FIRST);
  }

  /** Whether a line is part of the total. */
  public enum Inclusion {
    INCLUDED,
    /** Shown beside the total; the buyer may have it too. */
    OPTIONAL,
    /** Shown beside the total; the buyer may have it instead of another line. */
    ALTERNATE
  }

  /** What names this line among others: its group, and the item number or the text. */
  public String key() {
    return Group.key(group, item.orElse(description));
  }

  /** The same line in another group. */
  public ExtraLine in(int otherGroup) {
    return in(otherGroup, 1);
  }

  /** The same line in another group, that is sold so many times. */
  public ExtraLine in(int otherGroup, int count) {
    return new ExtraLine(
        standing, item, description, quantity * count, unitPrice, insteadOf, otherGroup);
  }

  ExtraLine as(Inclusion other) {
    return new ExtraLine(other, item, description, quantity, unitPrice, Optional.empty(), group);
  }

  ExtraLine times(int count) {
    return new ExtraLine(standing, item, description, count, unitPrice, insteadOf, group);
  }
}
