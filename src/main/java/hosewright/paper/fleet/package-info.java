/**
 * The workbook of a fleet's budget, one sheet for each question.
 *
 * <p>Shows a budget and works nothing out. Begin with {@link BudgetWorkbook}.
 */
package hosewright.paper.fleet;
