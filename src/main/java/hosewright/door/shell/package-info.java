/**
 * The shell's table of contents: every command there is, named once.
 *
 * <p>A command exists once it stands here. Begin with {@link Commands}.
 */
package hosewright.door.shell;
