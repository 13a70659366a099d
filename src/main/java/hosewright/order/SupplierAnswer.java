package hosewright.order;

import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What one supplier answered when asked for the price of something that has none.
 *
 * @param wanted the words it was asked for in
 * @param quantity how many were asked for
 * @param chosen whether it will be bought here
 * @param reason why, where it is not the cheapest landed; may be empty
 */
public record SupplierAnswer(
    String wanted, int quantity, Offer offer, boolean chosen, String reason) {

  /** What all of them cost on the dealer's dock, in the supplier's currency. */
  public Money landed() {
    return offer.unitCost().multipliedBy(quantity).plus(offer.freight());
  }

  public CurrencyUnit currency() {
    return offer.unitCost().getCurrencyUnit();
  }

  /** This answer, taken or left. */
  public SupplierAnswer chosen(boolean taken, Optional<String> why) {
    return new SupplierAnswer(wanted, quantity, offer, taken, taken ? why.orElse("") : "");
  }

  /**
   * Who would deliver, for how much and when.
   *
   * @param freight for all of them
   */
  public record Offer(
      String supplier, Money unitCost, Money freight, int leadDays, String remark) {}
}
