/**
 * Quotes, their steps and numbers, and customers with their terms, kept in the books.
 *
 * <p>A kept document is never rewritten. Begin with {@link StoredQuotes}.
 */
package hosewright.store.quote;
