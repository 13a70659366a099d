/**
 * A job in, a plan out: finds the line, checks it, cautions, and writes it down.
 *
 * <p>Pure: the same job, catalogue, prices and day give the same plan. Begin with {@link Planner}.
 */
package hosewright.line.plan;
