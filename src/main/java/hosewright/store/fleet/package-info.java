/**
 * An agency's hose and its records kept in the books.
 *
 * <p>Knows rows and what they are made into. Begin with {@link FleetStore}.
 */
package hosewright.store.fleet;
