/**
 * Quantities as the trade writes them, read in and shown.
 *
 * <p>A bare number is refused where its unit could be mistaken; knows no hose. Begin with {@link
 * Measures}.
 */
package hosewright.measure;
