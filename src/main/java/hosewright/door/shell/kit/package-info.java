/** Commands for kits: lists of parts under a name. */
package hosewright.door.shell.kit;
