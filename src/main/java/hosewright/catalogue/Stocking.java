package hosewright.catalogue;

/**
 * How an item is bought and kept.
 *
 * @param supplier supplier code
 * @param packSize pieces in the supplier's pack, 1 or more
 * @param leadDays calendar days from order to dock
 * @param onHand pieces (or feet) in stock when the catalogue was loaded
 */
public record Stocking(String supplier, int packSize, int leadDays, int onHand) {}
