/**
 * Hose that a line may be laid of, bought coupled, made up or owned, and the covers of a length.
 *
 * <p>Knows what is wished of hose, not what else stands in the line. Begin with {@link HoseLines}.
 */
package hosewright.line.hose;
