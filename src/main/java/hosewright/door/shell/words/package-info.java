/**
 * How several commands say things: sentences, units, bars.
 *
 * <p>Knows no command. Begin with {@link Prose}.
 */
package hosewright.door.shell.words;
