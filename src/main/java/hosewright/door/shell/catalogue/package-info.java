/**
 * What a person types about the catalogue, and what is shown in answer.
 *
 * <p>A command parses, calls one class of the desk and renders; it decides nothing. Begin with any
 * class that ends in {@code Command}.
 */
package hosewright.door.shell.catalogue;
