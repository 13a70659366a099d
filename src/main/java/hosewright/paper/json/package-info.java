/**
 * Documents in JSON: what scripts read and what a quote is kept as, money and ends written one way.
 *
 * <p>Knows how things are written, never what they mean. Begin with {@link Json}.
 */
package hosewright.paper.json;
