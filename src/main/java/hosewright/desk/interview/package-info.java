/**
 * Asks a person for a job, one question at a time, and shows the plan so far.
 *
 * <p>Knows whoever asks only as an {@link Asker}. Begin with {@link Interview}.
 */
package hosewright.desk.interview;
