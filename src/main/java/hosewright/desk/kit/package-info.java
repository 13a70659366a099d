/**
 * Kits: lists of parts under a name, kept beside the books and written out into quotes.
 *
 * <p>A quote keeps the parts, never the kit's name alone, so a changed kit changes no quote. Begin
 * with {@link AddKit}.
 */
package hosewright.desk.kit;
