/**
 * What the water does where lines divide, join and are pumped on: the two questions on any layout.
 *
 * <p>Knows named nodes and the links between them, not who sells what they are made of, and
 * searches nothing. Begin with {@link NetworkHydraulics}.
 */
package hosewright.hydraulics.network;
