/**
 * Commands of the table of what other currencies are worth.
 *
 * <p>Parses and shows, decides nothing. Begin with {@link RateSetCommand}.
 */
package hosewright.door.shell.rate;
