/**
 * The papers of an order: the slips for shelf, bench, suppliers and shipping.
 *
 * <p>Shows an order and works nothing out. Begin with {@link SlipWorkbook}.
 */
package hosewright.paper.order;
