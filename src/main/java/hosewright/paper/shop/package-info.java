/**
 * The house's own workbook of a quote: what to pick, price breaks, other ways to do the job, the
 * friction formulas side by side. Nothing here goes to a buyer.
 *
 * <p>Shows a quote and works nothing out but what a cross-check needs. Begin with {@link
 * ShopWorkbook}.
 */
package hosewright.paper.shop;
