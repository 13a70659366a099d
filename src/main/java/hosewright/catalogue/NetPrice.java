package hosewright.catalogue;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The price a given buyer pays on a given day: what a planner minimises.
 *
 * <p>Implementations hold the date and the customer's terms; the core calls this without knowing
 * them.
 */
public interface NetPrice {

  /**
   * The net price of one unit, rounded to the cent.
   *
   * @param item the item bought
   * @param quantity how many are bought in all, 1 or more, which decides the quantity break
   * @return empty when no price is in force
   */
  Optional<Money> unitPrice(Item item, int quantity);

  /** The quantities from which a lower price may hold, smallest first. */
  default List<Integer> breakQuantities(Item item) {
    return List.of();
  }
}
