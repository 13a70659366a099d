/**
 * The books on disk or on a server: opening, locking, moving, one dialect or the other.
 *
 * <p>Knows tables as such, no trade. Begin with {@link Database}.
 */
package hosewright.store.database;
