/**
 * What lies in a data folder beside and around the store: the dealer's own files, backups, and what
 * a program that was killed left half done.
 *
 * <p>Opens no store. Begin with {@link DataFolder}.
 */
package hosewright.store.folder;
