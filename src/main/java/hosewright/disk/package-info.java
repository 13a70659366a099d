/**
 * Files on disk as such: for their owner alone, whole or not at all, and never through a link that
 * somebody laid in their place.
 *
 * <p>Knows no file's content. Begin with {@link OwnerOnly}.
 */
package hosewright.disk;
