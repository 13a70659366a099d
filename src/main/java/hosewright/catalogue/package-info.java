/**
 * What a dealer sells: items, ratings, prices in force and their breaks, and how to find one of
 * them.
 *
 * <p>Knows what an item is by its kind and ends, and knows neither a job nor a customer. Begin with
 * {@link Catalogue}; {@link CatalogueReader} reads a dealer's files.
 */
package hosewright.catalogue;
