/**
 * What a command is: its name, options, help, and what it is called with.
 *
 * <p>Knows no trade; runs nothing. Begin with {@link ShellCommand}.
 */
package hosewright.door.shell.command;
