/**
 * A quote: its lines and prices, how it is made, changed by hand, revised and compared.
 *
 * <p>Knows plans and terms, no paper and no store, and not what steps a quote goes through; what is
 * kept is never rewritten. Begin with {@link Quote} and {@link QuoteMaker}.
 */
package hosewright.quote;
