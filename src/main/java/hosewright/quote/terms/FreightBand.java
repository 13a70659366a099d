package hosewright.quote.terms;

import org.joda.money.Money;

/**
 * One row of the dealer's freight table.
 *
 * @param upToLb shipping weight, lb, up to and including which the charge holds
 * @param charge charge for the whole shipment
 */
public record FreightBand(double upToLb, Money charge) {}
