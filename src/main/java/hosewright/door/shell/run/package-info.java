/**
 * Runs commands: parses a line, completes it, goes through scripts, tells failures, sets exit
 * codes.
 *
 * <p>Knows commands as such and no trade. Begin with {@link CommandRunner}.
 */
package hosewright.door.shell.run;
