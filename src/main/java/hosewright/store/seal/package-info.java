/**
 * Tells a row, a file or a catalogue that reads as it was written from one that a disk has changed.
 *
 * <p>Guards against accident, not against whoever may write the books: they could seal them anew.
 * Knows rows as such, no trade. Begin with {@link Seal}.
 */
package hosewright.store.seal;
