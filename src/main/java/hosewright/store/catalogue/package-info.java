/**
 * Items, prices and costs kept in the books; a load adds and closes rows and rewrites none.
 *
 * <p>Knows rows and what they are made into. Begin with {@link CatalogueStore}.
 */
package hosewright.store.catalogue;
