/**
 * Copies of the books in one file that holds data and nothing that could run: how it is laid out,
 * written, read and put back, the same for books in a folder and on a server.
 *
 * <p>Knows tables as such, no trade. Begin with {@link Backup}; {@link Layout} says what stands in
 * the file.
 */
package hosewright.store.backup;
