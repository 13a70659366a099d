/**
 * Writes out how an answer of hydraulics was reached, so that it can be checked by hand.
 *
 * <p>Calculates nothing that is not calculated elsewhere as well. Begin with {@link Working}.
 */
package hosewright.hydraulics.working;
