/**
 * A long file of jobs to a file of priced lines, row by row in order.
 *
 * <p>Knows one row at a time and keeps nothing. Begin with {@link TenderPricing}.
 */
package hosewright.tender;
