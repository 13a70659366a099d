/**
 * Judges a whole line by the rules of the trade and the limits of its parts.
 *
 * <p>Each check has an id, a limit and a source; none of them chooses a part. Begin with {@link
 * Checks}.
 */
package hosewright.line.check;
