package hosewright.quote;

import hosewright.quote.QuoteLine.Break;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What a line of a quote says of an item, and what it costs. */
public interface LinePrices {

  /**
   * The facts of a line.
   *
   * @param quantity how many in all, which decides the price break
   * @return empty when the item is not known or has no price
   */
  Optional<Priced> of(String item, int quantity);

  /**
   * An item at a price.
   *
   * @param listPrice of one unit at the quantity, before terms
   * @param unitPrice of one unit at the quantity, after terms, before a line discount
   * @param breaks after terms, before a line discount; never empty
   */
  record Priced(
      String description,
      String unit,
      String unitCode,
      double eachLb,
      Money listPrice,
      Money unitPrice,
      List<Break> breaks) {}
}
