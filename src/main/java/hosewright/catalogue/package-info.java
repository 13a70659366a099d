/**
 * What a dealer sells: items, ratings, prices in force and their breaks.
 *
 * <p>Knows what an item is by its kind, sort and ends, and knows neither a job nor a customer. What
 * a row does not say is unknown, never taken for granted. Begin with {@link Catalogue}; {@code
 * reading} reads a dealer's files.
 */
package hosewright.catalogue;
