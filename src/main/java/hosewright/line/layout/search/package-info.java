/**
 * Which layouts are worth pricing: which lines each leg may be laid with, what divides the water
 * between them, and which of all their joinings another is as good as. It knows bounds on prices
 * and pressures, not how a whole layout is priced, fed or checked. {@link
 * hosewright.line.layout.search.LayoutSearch} is the way in.
 */
package hosewright.line.layout.search;
