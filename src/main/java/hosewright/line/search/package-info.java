/**
 * Finds the cheapest whole line, or the front of those that are each best in something.
 *
 * <p>Exact: a branch is left out only by a bound below the truth. Begin with {@link Shop}, then
 * {@link Search}.
 */
package hosewright.line.search;
