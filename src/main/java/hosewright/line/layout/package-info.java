/**
 * The cheapest layout: which way each leg is laid, and what divides the water between them. It
 * knows how ways of legs add up in pressure and in price; how one leg may be laid it is told by
 * {@code line.search}. {@link hosewright.line.layout.LayoutPlanner} is the way in.
 */
package hosewright.line.layout;
