/**
 * The papers of a quote: workbook, PDF, lines as text, a summary in plain words.
 *
 * <p>Shows a quote and works nothing out but what a cross-check needs. Begin with {@link
 * QuoteWorkbook} and {@link QuotePdf}.
 */
package hosewright.paper.quote;
