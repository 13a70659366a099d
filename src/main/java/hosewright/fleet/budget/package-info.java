/**
 * What an agency's hose will need: how it wears, what must be replaced when, and what that costs.
 *
 * <p>Knows records and a catalogue's prices, never a line or a quote. Begin with {@link
 * BudgetMaker}.
 */
package hosewright.fleet.budget;
