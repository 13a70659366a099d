/**
 * The cheapest layout: priced as a whole, with the water in it, checked. Which layouts are worth
 * that it is told by {@code line.layout.search}, and how one leg may be laid by {@code
 * line.search}. {@link hosewright.line.layout.LayoutPlanner} is the way in.
 */
package hosewright.line.layout;
