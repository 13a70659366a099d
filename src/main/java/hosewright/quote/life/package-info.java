/**
 * How a quote lives: which step follows which, who signed for it, how it stands in lists, and what
 * keeps it.
 *
 * <p>Knows what a quote says and prices none of it; {@link QuoteStore} and {@link QuoteCodec} are
 * promises that the store and the papers keep. Begin with {@link QuoteLife}.
 */
package hosewright.quote.life;
