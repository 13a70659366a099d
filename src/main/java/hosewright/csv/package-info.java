/**
 * Reads tables: a dealer's files with every problem found in one go, and the tables of facts that
 * come with the program.
 *
 * <p>Knows rows and cells, not what stands in them. Begin with {@link TableReader}.
 */
package hosewright.csv;
