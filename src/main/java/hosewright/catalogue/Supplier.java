package hosewright.catalogue;

import java.util.Optional;
import org.joda.money.Money;

/**
 * Somebody the dealer buys from.
 *
 * @param leadDays calendar days from order to dock
 * @param minimumOrder the least an order comes to; empty for any
 */
public record Supplier(String code, String name, int leadDays, Optional<Money> minimumOrder) {}
