/**
 * The workbook of a tender and the list of what was wrong with its rows.
 *
 * <p>Shows results and works nothing out. Begin with {@link TenderWorkbook}.
 */
package hosewright.paper.tender;
