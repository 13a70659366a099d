/**
 * The water in a line: its parts as elements of hydraulics, and what pressure each of them sees.
 *
 * <p>Judges nothing. Begin with {@link PlanHydraulics}.
 */
package hosewright.line.water;
