/**
 * An accepted quote becomes an order and its purchase orders: raised, bought, received, shipped or
 * cancelled.
 *
 * <p>Knows what must be kept, not how. Begin with {@link Raising}; {@link OrderBook} is what a
 * store promises.
 */
package hosewright.order;
