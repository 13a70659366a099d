/**
 * Options and arguments that several commands share.
 *
 * <p>Turns what is typed into what the desk asks for, nothing more. Begin with whichever option you
 * need.
 */
package hosewright.door.shell.option;
