/**
 * Ends of hose and pipe: how they are written, what mates with what, and what a measured thread is.
 *
 * <p>Knows no item and no price. Begin with {@link End}, then {@link Mating}.
 */
package hosewright.thread;
