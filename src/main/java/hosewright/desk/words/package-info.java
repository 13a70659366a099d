/**
 * What people type about the lines of a quote: items by words, lines by number, prices.
 *
 * <p>Begin with {@link WantedLine} and {@link LineChoice}.
 */
package hosewright.desk.words;
