/**
 * A quote edited as a small text, and revised as it comes back.
 *
 * <p>Begin with {@link EditQuote}.
 */
package hosewright.desk.edit;
