/**
 * What an answer looks like: text, tables, lists, as wide as the screen.
 *
 * <p>Knows no command and no trade. Begin with {@link Screen}.
 */
package hosewright.door.shell.screen;
