package hosewright.catalogue;

/**
 * How an item is sold.
 *
 * @param unit how it is counted
 * @param discontinued no longer sold once the stock is gone
 * @param stocking how it is bought and kept
 */
public record Selling(UnitOfSale unit, boolean discontinued, Stocking stocking) {}
