/**
 * Who buys and on what terms: customers, contract prices, freight, margins and their floors.
 *
 * <p>Knows no quote. Begin with {@link Customers}.
 */
package hosewright.quote.terms;
