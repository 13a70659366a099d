/**
 * A quote: its lines and prices, how it is made, changed by hand, revised, compared, and how it
 * lives.
 *
 * <p>Knows plans and terms, no paper and no store; what is kept is never rewritten. Begin with
 * {@link Quote} and {@link QuoteMaker}.
 */
package hosewright.quote;
