package hosewright.quote;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One line of a quote.
 *
 * @param position 1 for the first
 * @param group number of the group it belongs to
 */
public record QuoteLine(
    int position, int group, Goods goods, int quantity, Price price, Optional<String> note) {

  /** A line of the first group. */
  public QuoteLine(int position, Goods goods, int quantity, Price price, Optional<String> note) {
    this(position, Group.FIRST, goods, quantity, price, note);
  }

  /** What names this line among others: its group, and the item number or the free text. */
  public String key() {
    return Group.key(group, goods.key());
  }

  /** This line where it is not taxed. */
  QuoteLine untaxed() {
    return new QuoteLine(
        position,
        group,
        new Goods(
            goods.item(),
            goods.description(),
            goods.unit(),
            goods.unitCode(),
            goods.weightLb(),
            false),
        quantity,
        price,
        note);
  }

  /** The price breaks as the buyer sees them, after the line discount. */
  public List<Break> netBreaks() {
    List<Break> breaks =
        price.agreed().map(agreed -> List.of(new Break(1, agreed))).orElse(price.breaks());
    return price
        .discount()
        .map(less -> breaks.stream().map(step -> step.at(less.off(step.unitPrice()))).toList())
        .orElse(breaks);
  }

  /**
   * What is sold.
   *
   * @param item the item number; empty for free text
   * @param unitCode UN/ECE Recommendation 20 code
   */
  public record Goods(
      String item,
      String description,
      String unit,
      String unitCode,
      double weightLb,
      boolean taxable) {

    /** What names it among others: the item number, or the text of free text. */
    public String key() {
      return item.isEmpty() ? description : item;
    }
  }

  /**
   * What it costs.
   *
   * @param unitPrice after terms and line discount
   * @param breaks the price breaks in force, frozen: quantity from, unit price after terms and
   *     before a line discount
   * @param agreed the price of one that was set by hand, before a line discount; no break holds
   *     then
   */
  public record Price(
      Money listPrice,
      Money unitPrice,
      Money extended,
      List<Break> breaks,
      Optional<Discount> discount,
      Optional<Money> agreed) {

    /** Documents kept before prices were set by hand have none. */
    public Price {
      agreed = agreed == null ? Optional.empty() : agreed;
    }

    /** At the price that terms and breaks give. */
    public Price(
        Money listPrice,
        Money unitPrice,
        Money extended,
        List<Break> breaks,
        Optional<Discount> discount) {
      this(listPrice, unitPrice, extended, breaks, discount, Optional.empty());
    }
  }

  /**
   * From this quantity up, this net unit price.
   *
   * @param listPrice the list price from this quantity up; empty where it was not kept
   */
  public record Break(int minimumQuantity, Money unitPrice, Optional<Money> listPrice) {

    /** Documents kept before list prices stood in breaks have none. */
    public Break {
      listPrice = listPrice == null ? Optional.empty() : listPrice;
    }

    /** One of which no list price is known. */
    public Break(int minimumQuantity, Money unitPrice) {
      this(minimumQuantity, unitPrice, Optional.empty());
    }

    /** The same from the same quantity up at another net price. */
    public Break at(Money other) {
      return new Break(minimumQuantity, other, listPrice);
    }
  }
}
