/**
 * What every workbook is made of: pages, cells, looks, formulas, and files of the same bytes each
 * time.
 *
 * <p>Knows no trade. Begin with {@link Page}.
 */
package hosewright.paper.sheet;
